import { say } from "../../../core/say.ts";
import { el } from "../../dom/el.ts";
import type { State } from "../../state/store.ts";
import { storekeeperLists } from "./storekeeperLists.ts";
import type { ToDo, ToDoList } from "./toDo.ts";

/** The storekeeper's lists, large; the same on the screen and on paper. */
export function storekeeperSheet(state: State): HTMLElement {
	return el("div", { class: "to-do-lists" }, ...storekeeperLists(state).map(listOf));
}

function listOf({ urgent, word, title, lines }: ToDoList): HTMLElement {
	return el(
		"section",
		{ class: lines.length > 0 && urgent ? "to-do urgent" : "to-do" },
		el("h2", {}, el("span", { class: "to-do-word" }, word), " ", title),
		lines.length === 0
			? el("p", { class: "none" }, say`None.`)
			: el("ul", {}, ...lines.map(lineOf)),
	);
}

function lineOf({ item, amount, by, more }: ToDo): HTMLLIElement {
	return el(
		"li",
		{},
		el("span", { class: "to-do-box", "aria-hidden": "true" }),
		el("strong", { class: "to-do-item" }, item),
		el("span", { class: "to-do-amount" }, amount),
		el("span", { class: "to-do-by" }, by),
		more !== "" && el("span", { class: "to-do-more" }, more),
	);
}

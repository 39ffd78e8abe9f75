import { say } from "../../../core/say.ts";
import type { Source } from "../../../core/source.ts";
import { el, fill } from "../../dom/el.ts";
import { semicolon } from "../../format/semicolon.ts";
import type { OwnPage, PrintOut } from "../../page.ts";
import { paperForm } from "../../print/paperForm.ts";
import { printOut } from "../../print/printOut.ts";
import { markWords } from "../../sheet/markWords.ts";
import { pageHead } from "../../sheet/pageHead.ts";
import type { State } from "../../state/store.ts";
import { firstAid } from "./firstAid.ts";
import { firstAidTitle } from "./firstAidTitle.ts";

/** First aid and spills, to be read before it is needed and to hang on the wall. */
export const firstAidPage: OwnPage = {
	mount(place, { store }) {
		const onPrint = () => printOut(firstAidOut, store.state);
		fill(
			place,
			pageHead(el("h1", {}, firstAidTitle.title), introduction),
			el(
				"div",
				{ class: "tools" },
				el("button", { type: "button", onclick: onPrint }, firstAidOut.name),
			),
			numbersToCall(),
			mishapParts(),
		);
		return {
			file: firstAidTitle.file,
			onPaper: firstAidOut,
			paint: () => {},
			show: () => {},
			destroy: () => {},
		};
	},
};

/** The page for the wall beside the place of mixing. */
export const firstAidOut: PrintOut = {
	name: say`Print first aid for the wall`,
	pages: (state: State) => [
		paperForm(
			state,
			"to-read",
			{ title: firstAidTitle.title },
			el("p", { class: "paper-how" }, introduction),
			numbersToCall(),
			mishapParts(),
		),
	],
};

const introduction = say`What your hospital and the maker's sheet say comes first; this page does not replace care. Know where the clean water is before you open the bottle.`;

function numbersToCall(): HTMLElement {
	return el(
		"p",
		{ class: "to-call" },
		el("strong", {}, say`Local emergency number: ______________`),
		" ",
		el("strong", {}, say`Poison centre: ______________`),
	);
}

/** What can happen and what is done then, one part each. */
export function mishapParts(): HTMLElement {
	return el(
		"div",
		{ class: "topics" },
		...firstAid.map(({ what, todo, sources }) =>
			el(
				"section",
				{ class: "topic" },
				el("h2", {}, what),
				el("ul", { class: "says" }, ...todo.map((words) => el("li", {}, words))),
				el("p", { class: "hint" }, sources.map(sourceWords).join(semicolon), "."),
			),
		),
	);
}

function sourceWords({ mark, title, place }: Source): string {
	if (mark !== "seen") return markWords(mark);
	return say`${markWords(mark)}: ${place ? `${title}, ${place}` : title}`;
}

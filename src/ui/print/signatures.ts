import { el } from "../dom/el.ts";
import { standing } from "../shell/standing.ts";

/** Room to sign, one box for each who does, and whose word comes first. */
export function signatures(...who: readonly string[]): HTMLElement {
	return el(
		"footer",
		{ class: "signatures" },
		el("div", {}, ...who.map((words) => el("span", { class: "write" }, words))),
		el("p", { class: "standing" }, standing),
	);
}

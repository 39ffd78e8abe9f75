import { type Child, el } from "../dom/el.ts";

/** A table for paper: header cells, then groups of rows that stay together on a page. */
export function uprightTable(
	className: string,
	head: readonly Child[],
	groups: readonly HTMLElement[],
): HTMLElement {
	return el(
		"table",
		{ class: `upright-table ${className}` },
		el("thead", {}, el("tr", {}, ...head.map((words) => el("th", { scope: "col" }, words)))),
		...groups,
	);
}

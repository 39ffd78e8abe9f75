import { el } from "../../dom/el.ts";

/** A table that moves sideways where the screen is narrower, by the keys too. */
export function wideTable(table: HTMLTableElement): HTMLElement {
	const name = table.caption?.textContent ?? "";
	return el(
		"div",
		{ class: "month-table", tabindex: 0, role: "region", "aria-label": name },
		table,
	);
}

import { el } from "../../dom/el.ts";
import type { GridColumn } from "../gridModel.ts";

/** Column name with its unit beneath, as text nodes. */
export function renderHeader(th: HTMLElement, column: GridColumn | undefined): void {
	if (!column) return;
	th.replaceChildren(
		el(
			"div",
			{ class: column.numeric ? "head numeric" : "head" },
			el("span", { class: "head-label" }, column.label),
			column.unit !== "" && el("span", { class: "head-unit" }, column.unit),
		),
	);
}

import { DAYS_PER_WEEK } from "../../../core/values/date.ts";
import { el } from "../../dom/el.ts";
import type { GridModel } from "../../grid/gridModel.ts";
import { SemanticTable } from "../../grid/library/semanticTable.ts";
import { printedFoot, printedHead } from "../../print/printedHead.ts";
import { daysOf } from "../../state/daysOf.ts";
import type { State } from "../../state/store.ts";
import { weekGrid } from "../week/weekGrid.ts";
import { weekHeadline } from "../week/weekHeadline.ts";
import { weekPage } from "../week/weekPage.ts";

/** The plan upright, a week a page, to go with other papers in one job; what to look out for stands on the last. */
export function planPapers(state: State): HTMLElement[] {
	const model = weekGrid(state);
	const days = daysOf(state).length;
	const weeks = Math.max(1, Math.ceil(days / DAYS_PER_WEEK));
	return Array.from({ length: weeks }, (_, week) => {
		const isLast = week === weeks - 1;
		const from = week * DAYS_PER_WEEK;
		const shown = daysFrom(model, from, Math.min(days, from + DAYS_PER_WEEK), isLast);
		return page(state, shown, isLast);
	});
}

function page(state: State, model: GridModel, isLast: boolean): HTMLElement {
	const table = new SemanticTable();
	table.show(model);
	return el(
		"section",
		{ class: "plan-paper" },
		...printedHead(state),
		el("h1", {}, weekHeadline(state)),
		el("div", { class: "as-table" }, table.element),
		isLast && el("div", { class: "under" }, ...(weekPage.under?.(state, async () => {}) ?? [])),
		...(isLast ? printedFoot() : []),
	);
}

/** The plan's cells for some of its days, with the measures at the left and, where wanted, the whole at the right. */
function daysFrom(model: GridModel, from: number, until: number, withTotal: boolean): GridModel {
	const days = Array.from({ length: until - from }, (_, day) => from + day + 1);
	const shown = [0, ...days, ...(withTotal ? [model.columns.length - 1] : [])];
	return {
		...model,
		columns: shown.flatMap((column) => model.columns[column] ?? []),
		cell: (row, column) => model.cell(row, shown[column] ?? 0),
	};
}

import { say } from "../../core/say.ts";
import { el } from "../dom/el.ts";
import type { GridModel } from "./gridModel.ts";
import { cellClasses } from "./renderCell.ts";

/** Rows beyond these are left out of the plain table; the saved file has them all. */
const MOST_ROWS = 1000;

/** The same cells as a plain table: for screen readers, for reading at any zoom, for paper. */
export function semanticTable(model: GridModel): HTMLTableElement {
	const head = el(
		"tr",
		{},
		model.rowName && el("th", { scope: "col", class: "line-name" }, say`Line`),
		...model.columns.map((column) =>
			el(
				"th",
				{ scope: "col", class: column.numeric ? "numeric" : undefined },
				column.label,
				column.unit !== "" && el("span", { class: "head-unit" }, ` ${column.unit}`),
			),
		),
	);
	const body = el("tbody");
	const last = Math.min(model.rowCount, MOST_ROWS);
	for (let row = 0; row < last; row++) body.append(bodyRow(model, row));
	const left = model.rowCount - last;
	return el(
		"table",
		{ class: "plain-table" },
		el(
			"caption",
			{},
			left > 0 ? say`${model.name} (${left} more rows are in the file)` : model.name,
		),
		el("thead", {}, head),
		body,
	);
}

function bodyRow(model: GridModel, row: number): HTMLTableRowElement {
	const cells = model.columns.map((column, at) => {
		const cell = model.cell(row, at);
		const content = [
			(cell.problems?.length ?? 0) > 0 && el("span", { class: "problem-mark" }, "!"),
			el("span", { class: "figure" }, cell.text),
			cell.beneath && el("span", { class: "beneath" }, cell.beneath),
			cell.problems?.[0] && el("span", { class: "reason" }, cell.problems[0].message),
		] as const;
		const classes = cellClasses(cell, column.numeric, model.endsGroup?.(row));
		return at === 0 && cell.text !== ""
			? el("th", { scope: "row", class: classes }, ...content)
			: el("td", { class: classes }, ...content);
	});
	return el(
		"tr",
		{},
		model.rowName && el("td", { class: "line-name" }, model.rowName(row)),
		...cells,
	);
}

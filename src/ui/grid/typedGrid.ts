import type { Column } from "../../core/column.ts";
import { lineOf } from "../../core/workbook.ts";
import { problemsAt } from "../book/problemsAt.ts";
import { sheetOf, titleOf } from "../book/sheetOf.ts";
import type { State } from "../book/store.ts";
import { tableOf } from "../book/withTexts.ts";
import { shownChoice } from "../shown/shownChoice.ts";
import { columnWidth } from "./columnWidth.ts";
import type { Entry, GridCell, GridColumn, GridModel } from "./gridModel.ts";
import { headHeight, rowHeights } from "./rowHeights.ts";

const SAMPLED_ROWS = 200;

/** A sheet that people fill in, cell by cell as typed, with one empty row at the end to go on in. */
export function typedGrid(state: State, file: string): GridModel {
	const table = tableOf(state.workbook, file);
	const definitions = sheetOf(file)?.columns ?? {};
	const extra = table.header.filter(
		(key, at) => !(key in definitions) && table.header.indexOf(key) === at,
	);
	const keys = [...Object.keys(definitions), ...extra];
	const places = keys.map((key) => table.header.indexOf(key));
	const problems = problemsAt(state.plan.problems, file);
	const text = (row: number, at: number) => table.rows[row]?.[places[at] ?? -1] ?? "";
	const columns = keys.map((key, at) => {
		const sample = table.rows.slice(0, SAMPLED_ROWS).map((_, row) => text(row, at));
		return gridColumn(key, definitions[key], sample);
	});
	const entries = keys.map((key) => entryOf(key, definitions[key]));
	const heights = rowHeights(columns, table.rows.length + 1, text);
	return {
		name: titleOf(file),
		columns,
		rowCount: table.rows.length + 1,
		fixedColumns: 1,
		headerHeight: headHeight(columns),
		rowHeight: (row) => heights[row] ?? 0,
		rowName: (row) => (row < table.rows.length ? String(lineOf(table, row)) : "+"),
		cell(row, column): GridCell {
			const line = row < table.rows.length ? lineOf(table, row) : null;
			const key = keys[column] ?? "";
			const own = line === null ? [] : problems(line, key);
			const ofRow = line === null || column > 0 ? [] : problems(line, "");
			return {
				kind: "typed",
				text: shownChoice(text(row, column), columns[column]?.options),
				raw: text(row, column),
				problems: [...own, ...ofRow],
				...(entries[column] ? { entry: entries[column] } : {}),
			};
		},
	};
}

function gridColumn(
	key: string,
	column: Column<unknown> | undefined,
	sample: readonly string[],
): GridColumn {
	const label = column?.label ?? key;
	const unit = column?.unit ?? "not used";
	const options = column?.value.options;
	return {
		key,
		label,
		unit,
		numeric: column?.value.numeric ?? false,
		width: columnWidth(label, unit, [...sample, ...(options ?? [])]),
		...(options ? { options } : {}),
	};
}

function entryOf(key: string, column: Column<unknown> | undefined): Entry {
	if (!column)
		return {
			label: key,
			unit: "",
			help: "This column is not part of the sheet. It is kept and saved, and not used.",
			allowed: "any text",
		};
	const { label, unit, help, value, fallback } = column;
	return {
		label,
		unit,
		help,
		allowed: value.allowed,
		...(value.options ? { options: value.options } : {}),
		...(fallback === undefined ? {} : { blank: value.write(fallback) }),
	};
}

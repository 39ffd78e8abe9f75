import type { Column, Columns } from "../../core/column.ts";
import { tableOf } from "../../core/edit/withTexts.ts";
import { say } from "../../core/say.ts";
import { sheetOf } from "../../core/sheets/sheetOf.ts";
import { lineOf } from "../../core/workbook.ts";
import { shownDefault } from "../format/shownDefault.ts";
import { shownTyped } from "../format/shownTyped.ts";
import { problemsAt } from "../sheet/problemsAt.ts";
import { titleOf } from "../shell/titleOf.ts";
import type { State } from "../state/store.ts";
import { columnWidth } from "./columnWidth.ts";
import type { Entry, GridCell, GridColumn, GridModel } from "./gridModel.ts";
import { headHeight, rowHeights } from "./rowHeights.ts";

const SAMPLED_ROWS = 200;

/** A sheet that people fill in, cell by cell as typed, with one empty row at the end to go on in. */
export function typedGrid(state: State, file: string): GridModel {
	const table = tableOf(state.workbook, file);
	// Nothing is inherited: a file may well have a column called "constructor".
	const definitions: Columns = Object.assign(Object.create(null), sheetOf(file)?.columns);
	const extra = table.header.filter(
		(key, at) => !(key in definitions) && table.header.indexOf(key) === at,
	);
	const shown = Object.keys(definitions).filter((key) => !definitions[key]?.behind);
	const keys = [...shown, ...extra];
	const places = keys.map((key) => table.header.indexOf(key));
	const problems = problemsAt(state.plan.found, file);
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
		openEnd: true,
		headerHeight: headHeight(columns),
		rowHeight: (row) => heights[row] ?? 0,
		rowName: (row) => (row < table.rows.length ? String(lineOf(table, row)) : "+"),
		value: (row, column) => sortedBy(text(row, column), definitions[keys[column] ?? ""]),
		cell(row, column): GridCell {
			const line = row < table.rows.length ? lineOf(table, row) : null;
			const key = keys[column] ?? "";
			const own = line === null ? [] : problems(line, key);
			const ofRow = line === null || column > 0 ? [] : problems(line, "");
			return {
				kind: "typed",
				text: shownTyped(text(row, column), definitions[key]?.value),
				raw: text(row, column),
				problems: [...own, ...ofRow],
				...(entries[column] ? { entry: entries[column] } : {}),
			};
		},
	};
}

/** A number where the kind of cell has one; otherwise the text that it writes. */
function sortedBy(text: string, column: Column<unknown> | undefined): unknown {
	const read = column?.value.schema.safeParse(text);
	if (!read?.success || text.trim() === "") return undefined;
	return typeof read.data === "number" ? read.data : column?.value.write(read.data);
}

function gridColumn(
	key: string,
	column: Column<unknown> | undefined,
	sample: readonly string[],
): GridColumn {
	const label = column?.label ?? key;
	const unit = column?.unit ?? say`not used`;
	const options = column?.value.options;
	return {
		key,
		label,
		unit,
		numeric: column?.value.numeric ?? false,
		width: columnWidth(
			label,
			unit,
			[...sample, ...(options ?? [])].map((word) => shownTyped(word, column?.value)),
		),
		...(options ? { options } : {}),
	};
}

function entryOf(key: string, column: Column<unknown> | undefined): Entry {
	if (!column)
		return {
			label: key,
			unit: "",
			help: say`This column is not part of the sheet. It is kept and saved, and not used.`,
			allowed: say`any text`,
		};
	const { label, unit, help, value, fallback } = column;
	return {
		label,
		unit,
		help,
		allowed: value.allowed,
		...(value.options ? { options: value.options } : {}),
		...(fallback === undefined ? {} : { blank: shownDefault(column) }),
	};
}

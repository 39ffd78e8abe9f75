import type { Figure } from "../core/calculation.ts";
import type { Column } from "../core/column.ts";
import type { AnyTable } from "../core/computedTable.ts";
import type { Problem } from "../core/problem.ts";
import { asNote } from "../core/read/asNote.ts";
import { headerOf } from "../core/sheet.ts";
import { problemsSheet } from "../core/sheets/problems.ts";
import { csvLines, writeCsv } from "./writeCsv.ts";

/**
 * A sheet of the plan as a CSV file: unrounded, with at most six decimals and a
 * decimal point. A figure without an answer is blank.
 */
export function computedCsv(table: AnyTable): string {
	return writeCsv({ header: headerOf(table.sheet), rows: cellTexts(table) });
}

/** The same without the header: rows to be written below others of the sheet. */
export function computedLines(table: AnyTable): string {
	return csvLines(cellTexts(table));
}

function cellTexts({ sheet, rows }: AnyTable): string[][] {
	const columns = Object.entries(sheet.columns);
	return rows.map((row) => columns.map(([key, column]) => cellText(column, row[key])));
}

function cellText(column: Column<unknown>, cell: Figure<unknown> | undefined): string {
	if (!cell?.outcome.ok) return "";
	const { value } = cell.outcome;
	return typeof value === "string" ? value : column.value.write(value);
}

/** The problems as problems.csv, one a row, in the order given. Very long texts are cut, and say so. */
export function problemsCsv(problems: readonly Problem[]): string {
	const header = headerOf(problemsSheet) as (keyof Problem)[];
	return writeCsv({
		header,
		rows: problems.map((found) => header.map((key) => asNote(String(found[key] ?? "")))),
	});
}

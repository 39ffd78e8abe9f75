import type { Figure } from "../core/calculation.ts";
import type { Column } from "../core/column.ts";
import type { AnyTable } from "../core/computedTable.ts";
import type { Problem } from "../core/problem.ts";
import { beginning } from "../core/read/cellProblems.ts";
import { say } from "../core/say.ts";
import { headerOf } from "../core/sheet.ts";
import { problemsSheet } from "../core/sheets/problems.ts";
import { LONGEST_NOTE } from "../core/values/note.ts";
import { writeCsv } from "./writeCsv.ts";

/**
 * A sheet of the plan as a CSV file: unrounded, with at most six decimals and a
 * decimal point. A figure without an answer is blank.
 */
export function computedCsv(table: AnyTable): string {
	const columns = Object.entries(table.sheet.columns);
	return writeCsv({
		header: headerOf(table.sheet),
		rows: table.rows.map((row) => columns.map(([key, column]) => cellText(column, row[key]))),
	});
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
		rows: problems.map((found) => header.map((key) => cut(String(found[key] ?? "")))),
	});
}

function cut(text: string): string {
	if (text.length <= LONGEST_NOTE) return text;
	const remark = say`… (${text.length} characters in all)`;
	return beginning(text, LONGEST_NOTE - remark.length) + remark;
}

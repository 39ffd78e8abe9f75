import type { Plan } from "../core/plan/plan.ts";
import { headerOf, type Sheet } from "../core/sheet.ts";
import { computedSheets } from "../core/sheets/computedSheets.ts";
import { problemsSheet } from "../core/sheets/problems.ts";
import { typedSheets } from "../core/sheets/typedSheets.ts";
import type { Workbook } from "../core/workbook.ts";

/** One CSV file as it lies on disk: where, which sheet it is, and the columns it really has. */
export interface DescribedTable {
	readonly path: string;
	readonly sheet: Sheet;
	readonly header: readonly string[];
}

/** The typed sheets of a workbook, in the order of the format. */
export function typedTables(workbook: Workbook): DescribedTable[] {
	return typedSheets.flatMap((sheet) => {
		const table = workbook.tables[sheet.file];
		return table ? [{ path: sheet.file, sheet, header: table.header }] : [];
	});
}

/** The computed sheets of a plan and problems.csv, in `folder` ("" or ending in "/"). */
export function computedTables(plan: Plan, folder = ""): DescribedTable[] {
	const made = Object.values(plan.tables).map(({ sheet }) => sheet);
	const order = (sheet: Sheet) => computedSheets.indexOf(sheet);
	return [...made.sort((a, b) => order(a) - order(b)), problemsSheet].map((sheet) => ({
		path: `${folder}${sheet.file}`,
		sheet,
		header: headerOf(sheet),
	}));
}

import { type Problem, problem } from "../../core/problem.ts";
import { say } from "../../core/say.ts";
import { MOST_COLUMNS, MOST_ROWS } from "../csvProblems.ts";
import type { NamedBytes } from "../unzip.ts";
import { type SpreadsheetSheet, TooLarge } from "./cellsOfSheet.ts";
import { readOds } from "./readOds.ts";
import { readXlsx, XLSX_BOOK } from "./readXlsx.ts";

/**
 * Reads the sheets of a spreadsheet's own file, .xlsx or .ods.
 *
 * @param file its name
 * @param parts what it unpacks to
 */
export function readSpreadsheet(
	file: string,
	parts: readonly NamedBytes[],
): { readonly sheets: readonly SpreadsheetSheet[]; readonly problems: readonly Problem[] } {
	try {
		const isXlsx = parts.some(({ name }) => name === XLSX_BOOK);
		return { sheets: isXlsx ? readXlsx(parts) : readOds(parts), problems: [] };
	} catch (error) {
		return { sheets: [], problems: [error instanceof TooLarge ? large(file) : damaged(file)] };
	}
}

function damaged(file: string): Problem {
	return problem(
		{ file, line: null, column: "" },
		{
			code: "damaged-spreadsheet",
			received: file,
			allowed: say`a spreadsheet as .xlsx or .ods that can be read`,
			message: say`${file} is damaged or is no spreadsheet that can be read here; nothing was read from it. Open it where it was made and save its sheets as CSV.`,
		},
	);
}

function large(file: string): Problem {
	return problem(
		{ file, line: null, column: "" },
		{
			code: "too-large",
			received: file,
			allowed: say`at most ${MOST_ROWS} rows and ${MOST_COLUMNS} columns in a sheet`,
			message: say`${file} has a sheet that is larger than any of a workbook; nothing was read from it. Delete what lies far to the right or below, and save it again.`,
		},
	);
}

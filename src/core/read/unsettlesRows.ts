import { mayBeBlank } from "../column.ts";
import type { Problem } from "../problem.ts";
import { sheetOf } from "../sheets/sheetOf.ts";

/**
 * Whether a problem of a sheet as a whole leaves its rows uncertain. One that lacks a column
 * which may be blank is read as blank there, and its rows stand.
 */
export function unsettlesRows({ weight, code, file, column }: Problem): boolean {
	if (weight !== "error") return false;
	const missing = code === "missing-column" ? sheetOf(file)?.columns[column] : undefined;
	return missing === undefined || !mayBeBlank(missing);
}

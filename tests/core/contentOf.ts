import type { Plan } from "../../src/core/plan/plan.ts";
import { codesOf, rowsOf, valueIn } from "./planCells.ts";

/** What some columns of a computed sheet hold, row by row; undefined where a cell has no value. */
export function contentOf(plan: Plan, file: string, ...columns: string[]): unknown[][] {
	return rowsOf(plan, file).map((row) => columns.map((column) => valueIn(row[column])));
}

/** One column of a computed sheet. */
export function columnOf(plan: Plan, file: string, column: string): unknown[] {
	return contentOf(plan, file, column).flat();
}

/** Every cell of every computed sheet as text, and every problem in words: to hold two plans side by side. */
export function everything(plan: Plan): Record<string, unknown> {
	const sheets = Object.keys(plan.tables).map((file) => [
		file,
		rowsOf(plan, file).map((row) =>
			Object.entries(row).map(([column, cell]) =>
				[column, ...(cell.outcome.ok ? [inNineDigits(cell.outcome.value)] : codesOf(cell))].join(
					" = ",
				),
			),
		),
	]);
	return { ...Object.fromEntries(sheets), problems: plan.problems, made: plan.made };
}

/** More digits differ with the order of a sum; fewer would hide a change. */
function inNineDigits(value: unknown): unknown {
	return typeof value === "number" ? Number(value.toPrecision(9)) : value;
}

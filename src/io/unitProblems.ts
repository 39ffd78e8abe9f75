import { type Problem, problem } from "../core/problem.ts";
import { shown } from "../core/read/cellProblems.ts";
import { say } from "../core/say.ts";

/** A file without the column that says whose each row is. */
export function noUnitColumn(file: string, column: string, first: string): Problem {
	return problem(
		{ file, line: 1, column },
		{
			code: "no-unit-column",
			received: shown(first),
			allowed: say`${column} as the first column`,
			message: say`${file}: the first column is not ${column}, so nobody can tell whose its rows are; nothing was read from it.`,
		},
	);
}

/** A row with text in it that belongs to no unit. */
export function rowWithoutUnit(
	file: string,
	line: number,
	column: string,
	cells: readonly string[],
): Problem {
	return problem(
		{ file, line, column },
		{
			code: "row-without-unit",
			received: shown(cells.join(", ")),
			allowed: say`the name of a unit`,
			message: say`${file} line ${line} names no unit, so the row is in no unit's workbook.`,
		},
	);
}

import { type Problem, problem } from "../core/problem.ts";
import { shown } from "../core/read/cellProblems.ts";
import { say } from "../core/say.ts";
import { lineOf, type TextTable } from "../core/workbook.ts";
import type { Slip } from "./tidied.ts";

/** Longest text of a single cell, in characters: some thirty printed pages. */
export const LONGEST_CELL = 100_000;
/** Most rows of one sheet: more than a century of daily records for two units. */
export const MOST_ROWS = 100_000;
/** Most columns of one sheet; the widest of the format has some twenty. */
export const MOST_COLUMNS = 1000;
/** Most cells of one sheet: every row full, and room for columns of one's own. */
export const MOST_CELLS = 3_000_000;

const count = (n: number) => n.toLocaleString("en").replaceAll(",", "\u202f");

/** A cell that begins with a quote mark and does not end with it. @param cell its text, at least the start */
export function quoteProblem(
	file: string,
	line: number,
	kind: Slip["kind"],
	cell: string,
): Problem {
	const unclosed = kind === "open";
	return problem(
		{ file, line, column: "" },
		{
			code: unclosed ? "unclosed-quote" : "loose-quote",
			received: shown(cell),
			allowed: say`text in quotes "…", with every quote mark inside it written twice`,
			message: unclosed
				? say`${file} line ${line}: a quote mark opens and is never closed, so all that follows became one cell. Close it, or take it away.`
				: say`${file} line ${line}: a cell begins with a quote mark and goes on after the closing one. Write quote marks inside it twice.`,
		},
	);
}

/** One problem for every cell beyond LONGEST_CELL; its text is kept. */
export function longCells(file: string, table: TextTable): Problem[] {
	const found = (cells: readonly string[], line: number) =>
		cells.flatMap((cell, at) =>
			cell.length > LONGEST_CELL ? [longCell(file, line, table.header[at] ?? "", cell)] : [],
		);
	return [
		...found(table.header, 1),
		...table.rows.flatMap((cells, row) => found(cells, lineOf(table, row))),
	];
}

function longCell(file: string, line: number, key: string, cell: string): Problem {
	const column = shown(key);
	const allowed = say`at most ${count(LONGEST_CELL)} characters in a cell`;
	return problem(
		{ file, line, column },
		{
			code: "long-cell",
			received: shown(cell),
			allowed,
			message: say`${file} line ${line}, ${column || say`a cell without a column`}: the text is ${count(cell.length)} characters long; allowed is ${allowed}. It is kept.`,
		},
	);
}

/** So many rows that an old computer would stop working on them. */
export function tooManyRows(file: string): Problem {
	return problem(
		{ file, line: MOST_ROWS + 2, column: "" },
		{
			code: "too-many-rows",
			received: say`more than ${count(MOST_ROWS)} rows`,
			allowed: say`at most ${count(MOST_ROWS)} rows`,
			message: say`${file} has more than ${count(MOST_ROWS)} rows; nothing was read from it.`,
		},
	);
}

/** So many columns that no sheet of a workbook can be meant. */
export function tooManyColumns(file: string): Problem {
	return problem(
		{ file, line: 1, column: "" },
		{
			code: "too-many-columns",
			received: say`more than ${count(MOST_COLUMNS)} columns`,
			allowed: say`at most ${count(MOST_COLUMNS)} columns`,
			message: say`${file} has more than ${count(MOST_COLUMNS)} columns; nothing was read from it. Delete the empty columns and save it again.`,
		},
	);
}

/** So many cells that an old computer has no room for them. */
export function tooManyCellsInAll(file: string): Problem {
	return problem(
		{ file, line: null, column: "" },
		{
			code: "too-large",
			received: say`more than ${count(MOST_CELLS)} cells`,
			allowed: say`at most ${count(MOST_CELLS)} cells`,
			message: say`${file} has more than ${count(MOST_CELLS)} cells; nothing was read from it. Delete the empty columns and rows and save it again.`,
		},
	);
}

import Papa from "papaparse";
import { lineBreaks } from "../core/lineBreaks.ts";
import type { Problem } from "../core/problem.ts";
import type { TextTable } from "../core/workbook.ts";
import {
	longCells,
	MOST_CELLS,
	MOST_COLUMNS,
	MOST_ROWS,
	quoteProblem,
	tooManyCellsInAll,
	tooManyColumns,
	tooManyRows,
} from "./csvProblems.ts";
import { BYTE_ORDER_MARKS } from "./csvRecords.ts";
import { unguarded } from "./guarded.ts";
import { type Separator, separatorOf } from "./separatorOf.ts";
import { tidied } from "./tidied.ts";

/**
 * Reads a CSV file into texts, cell by cell, nothing guessed and nothing dropped.
 *
 * The separator (comma, semicolon, tab) is told from the header line; lines may end
 * in any way. A blank line is a row without cells. Rows keep their own number of
 * cells, and `lines` holds the file line where each begins. A quote mark that does
 * not enclose a cell and a cell beyond LONGEST_CELL are problems, and their text is
 * kept. A file of more than MOST_ROWS, MOST_COLUMNS or MOST_CELLS is a problem and
 * is `refused`: nothing is read from it.
 */
export function readCsv(file: string, text: string): ReadCsv {
	const refused = (problem: Problem): ReadCsv => ({
		table: { header: [], rows: [] },
		problems: [problem],
		separator: undefined,
		refused: true,
	});
	const body = text.replace(BYTE_ORDER_MARKS, "");
	const separator = separatorOf(body);
	if (hasMore(body, separator, MOST_CELLS)) return refused(tooManyCellsInAll(file));
	const { text: tidy, slips } = tidied(body, separator);
	const records: string[][] = [];
	const lines: number[] = [];
	const problems: Problem[] = [];
	let start = 0;
	let line = 1;
	let slip = 0;
	Papa.parse<string[]>(tidy, {
		delimiter: separator,
		newline: "\n",
		step: ({ data, meta }, parser) => {
			const raw = tidy.slice(start, meta.cursor);
			if (raw === "") return; // what follows the last line end is no row
			const cells = raw === "\n" ? [] : data.map(unguarded);
			const wrong = slips[slip];
			if (wrong && wrong.at < meta.cursor) {
				const opened = line + lineBreaks(tidy.slice(start, wrong.at));
				problems.push(quoteProblem(file, opened, wrong.kind, tidy.slice(wrong.at + 2)));
			}
			while ((slips[slip]?.at ?? Number.POSITIVE_INFINITY) < meta.cursor) slip++;
			records.push(cells);
			lines.push(line);
			line += lineBreaks(raw);
			start = meta.cursor;
			if (records.length > MOST_ROWS + 1) parser.abort();
		},
	});
	if (records.length > MOST_ROWS + 1) return refused(tooManyRows(file));
	const [header = [], ...rows] = records;
	if (header.length > MOST_COLUMNS) return refused(tooManyColumns(file));
	const table = { header, rows, lines: lines.slice(1) };
	return {
		table,
		problems: [...problems, ...longCells(file, table)],
		separator: header.length > 1 ? separator : undefined,
	};
}

interface ReadCsv {
	readonly table: TextTable;
	readonly problems: readonly Problem[];
	/** What stands between its cells, where it has more than one column. */
	readonly separator: Separator | undefined;
	/** Set where nothing was read; the only problem says why. */
	readonly refused?: true;
}

/** Whether a text has more than `most` of a character. */
function hasMore(text: string, character: string, most: number): boolean {
	let at = -1;
	for (let left = most; left >= 0; left--) {
		at = text.indexOf(character, at + 1);
		if (at < 0) return false;
	}
	return true;
}

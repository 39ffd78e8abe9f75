import Papa from "papaparse";
import { say } from "../../core/say.ts";
import { tidied } from "../../io/tidied.ts";
import type { CellText } from "./gridModel.ts";

export const MOST_PASTED_ROWS = 5000;
export const MOST_PASTED_COLUMNS = 60;
export const LONGEST_TEXT = 10_000;
/** More text than any sheet of a ward holds; reading it would stop an old laptop. */
export const MOST_TEXT = 5_000_000;

export interface Pasted {
	readonly cells: readonly CellText[];
	/** What was left out, in words; empty where everything fits. */
	readonly told: readonly string[];
}

/**
 * Reads text from a spreadsheet's clipboard as cells from `row`, `column` on.
 *
 * What goes beyond the limits is left out and told, never silently. More than
 * MOST_TEXT characters are refused as a whole.
 */
export function pasted(text: string, row: number, column: number, lastColumn: number): Pasted {
	if (text.length > MOST_TEXT)
		return {
			cells: [],
			told: [
				say`Nothing was pasted: ${words(text.length)} characters at once; at most ${words(MOST_TEXT)} are allowed.`,
			],
		};
	const lines = linesOf(text);
	const width = Math.min(MOST_PASTED_COLUMNS, lastColumn - column + 1);
	const told: string[] = [];
	const widest = lines.reduce((most, line) => Math.max(most, line.length), 0);
	if (lines.length > MOST_PASTED_ROWS)
		told.push(
			say`Rows after the first ${words(MOST_PASTED_ROWS)} were left out (${words(lines.length)} came).`,
		);
	if (widest > width)
		told.push(say`Columns after the first ${width} were left out (${words(widest)} came).`);
	let long = 0;
	const cells = lines.slice(0, MOST_PASTED_ROWS).flatMap((line, down) =>
		line.slice(0, width).flatMap((cell, across) => {
			if (cell.length <= LONGEST_TEXT)
				return [{ row: row + down, column: column + across, text: cell }];
			long += 1;
			return [];
		}),
	);
	if (long > 0)
		told.push(
			long === 1
				? say`1 cell was left out: it is longer than ${words(LONGEST_TEXT)} characters.`
				: say`${words(long)} cells were left out, each longer than ${words(LONGEST_TEXT)} characters.`,
		);
	return { cells, told };
}

/** Lines of cells. Text whose quote marks do not enclose cells is no spreadsheet's: it stands as it is. */
function linesOf(text: string): string[][] {
	if (text === "") return [];
	const plain = text.replace(/\r\n?/g, "\n").replace(/\n$/, "");
	if (plain === "") return [[""]];
	if (tidied(plain, "\t").slips.length > 0)
		return plain.split("\n").map((line) => line.split("\t"));
	return Papa.parse<string[]>(plain, { delimiter: "\t", newline: "\n" }).data;
}

function words(count: number): string {
	return String(count).replace(/\B(?=(\d{3})+$)/g, "\u202f");
}

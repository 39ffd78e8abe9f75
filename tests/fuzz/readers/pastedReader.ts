import assert from "node:assert/strict";
import { clipboardText } from "../../../src/ui/grid/clipboardText.ts";
import {
	LONGEST_TEXT,
	MOST_PASTED_COLUMNS,
	MOST_PASTED_ROWS,
	pasted,
} from "../../../src/ui/grid/pasted.ts";
import { expectSame } from "../expectSame.ts";
import type { Reader } from "../fuzzed.ts";
import { TROUBLE, textBytes } from "../textBytes.ts";

/** Parts and encloses cells; all else is text. */
const MARKS = /["\s\ufeff]/g;
const ROW = 3;
const COLUMN = 2;
const LAST_COLUMN = 9;

export const pastedReader: Reader = {
	name: "pasted text",
	seeds: [
		'1\t"two\nlines"\r\n3\t4\r\n',
		"a\tb\tc\n\n\td\n",
		'"5"" tube"\tx',
		"2027-03-01 6",
		"\n",
	].map(textBytes),
	words: [
		...TROUBLE,
		"\t",
		"\n",
		"\r\n",
		"\r",
		'"',
		'""',
		'\t"',
		'"\t',
		"\t\t\t\t\t\t\t\t\t\t",
	].map(textBytes),
	check(input) {
		const text = new TextDecoder().decode(input);
		const { cells, told } = pasted(text, ROW, COLUMN, LAST_COLUMN);
		for (const { row, column, text: cell } of cells) {
			assert.ok(
				row >= ROW && row < ROW + MOST_PASTED_ROWS && column >= COLUMN && column <= LAST_COLUMN,
				"beside the grid",
			);
			assert.ok(cell.length <= LONGEST_TEXT && !cell.includes("\r"));
		}
		const places = new Set(cells.map(({ row, column }) => row * MOST_PASTED_COLUMNS + column));
		assert.equal(places.size, cells.length, "two texts for one cell");
		for (const words of told) assert.doesNotMatch(words, /NaN|undefined|\b0 cells/);
		if (told.length > 0) return;
		const all = cells.map((cell) => cell.text).join("");
		assert.ok(all.replace(MARKS, "") === text.replace(MARKS, ""), "text lost, added or moved");
		expectCopied(
			cells.map((cell) => cell.text),
			cells.length === 0,
		);
	},
};

/** What is copied out of the grid is pasted as it was. */
function expectCopied(column: readonly string[], nothing: boolean): void {
	if (nothing) return;
	const block = column.map((text) => [text, ""]);
	const copied = clipboardText(block, 0, 0, block.length - 1, 1);
	expectSame(
		pasted(copied, 0, 0, 1).cells.map(({ text }) => text),
		block.flat(),
		"copied and pasted otherwise",
	);
}

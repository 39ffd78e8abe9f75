import assert from "node:assert/strict";
import { isUtf8 } from "node:buffer";
import { decode } from "../../../src/io/decode.ts";
import { readCsv } from "../../../src/io/readCsv.ts";
import { separatorOf } from "../../../src/io/separatorOf.ts";
import { writeCsv } from "../../../src/io/writeCsv.ts";
import { expectPlain } from "../expectPlain.ts";
import { expectSame } from "../expectSame.ts";
import type { Reader } from "../fuzzed.ts";
import { sampleFile } from "../sample.ts";
import { TROUBLE, textBytes } from "../textBytes.ts";

/** Marks that part or enclose cells, and what a guard adds: all else is text, and must not get lost. */
const MARKS = /["',;\t\r\n\ufeff]/g;
const LINE_BREAK = /\r\n?|\n/g;

export const csvReader: Reader = {
	name: "CSV",
	seeds: [
		...["births.csv", "lots.csv", "steps.csv", "unit.csv", "rounds.csv"].map((name) =>
			sampleFile(name, 4),
		),
		textBytes('a;b\r\n"x\r\ny";2\r\n\r\n"5"" tube";0,5\r\n'),
		textBytes('\ufeffa\tb\r1\t"2\n3"\r'),
	],
	words: [
		...TROUBLE,
		'"',
		'""',
		',"',
		'",',
		'"\r\n',
		";",
		"\t",
		"\r",
		"\n",
		"\r\n",
		' "',
		'" ',
	].map(textBytes),
	check(input) {
		const decoded = decode("x.csv", input);
		if (decoded.ok) {
			const isWide = input.includes(0) || input.includes(0xff);
			assert.ok(isUtf8(input) || isWide || decoded.advice, "guessed without a word");
			return expectRead(decoded.text);
		}
		expectPlain([decoded.problem], Buffer.from(input).toString("latin1"));
		const { line } = decoded.problem;
		assert.ok(line !== null && line >= 1 && line <= input.length + 1, "no line of the file");
	},
};

/** What must hold of a text that is read as CSV. */
export function expectRead(text: string): void {
	const { table, problems, refused } = readCsv("x.csv", text);
	expectPlain(problems, text);
	if (refused) assert.equal(problems.length, 1);
	if (refused) return;
	const records = [table.header, ...table.rows];
	const cells = records.flat();
	assert.ok(cells.length <= text.length + 1, "more cells than letters");
	assert.ok(stripped(cells.join("")) === stripped(text), "text lost, added or moved");
	expectLines(text, table.lines ?? [], table.rows);
	expectSameAgain(table);
	if (!text.includes('"')) expectSplit(text, records);
}

const stripped = (text: string) => text.replace(MARKS, "").replace(/\s/g, "");

/** Every line of the file belongs to the row that begins at it or before. */
function expectLines(text: string, lines: readonly number[], rows: readonly (readonly string[])[]) {
	const all = (text.replace(/^\ufeff+/, "").match(LINE_BREAK)?.length ?? 0) + 1;
	assert.equal(lines.length, rows.length);
	lines.forEach((line, row) => {
		assert.ok(
			line > (lines[row - 1] ?? 1) && line <= all,
			`row ${row} is said to be in line ${line}`,
		);
		const breaks = (rows[row] ?? []).reduce(
			(sum, cell) => sum + (cell.match(LINE_BREAK)?.length ?? 0),
			0,
		);
		const next = lines[row + 1];
		if (next !== undefined) assert.equal(next - line, breaks + 1, `lines of row ${row}`);
	});
}

/** What was read, written and read again, is the same. */
function expectSameAgain(table: {
	header: readonly string[];
	rows: readonly (readonly string[])[];
}) {
	const written = writeCsv(table);
	const again = readCsv("x.csv", written);
	const blank = table.header.length === 0 && table.rows.length === 0;
	expectSame(
		[again.table.header, ...again.table.rows],
		[table.header, ...table.rows],
		"written otherwise",
	);
	if (!blank)
		expectSame(
			again.problems.filter(({ code }) => code !== "long-cell"),
			[],
			"written badly",
		);
}

/** Without quote marks a file is its lines, split: told here in the plainest way. */
function expectSplit(text: string, records: readonly (readonly string[])[]): void {
	const body = text.replace(/^\ufeff+/, "");
	const separator = separatorOf(body);
	const lines = body.split(LINE_BREAK);
	if (lines.at(-1) === "") lines.pop();
	const wanted = lines.map((line) => (line === "" ? [] : line.split(separator)));
	const bare = (cells: readonly string[]) => cells.map((cell) => cell.replace(/^'+/, ""));
	expectSame(records.map(bare), wanted.length === 0 ? [[]] : wanted.map(bare), "split otherwise");
}

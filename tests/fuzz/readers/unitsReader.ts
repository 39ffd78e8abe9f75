import assert from "node:assert/strict";
import { csvRecords } from "../../../src/io/csvRecords.ts";
import { decode } from "../../../src/io/decode.ts";
import { readCsv } from "../../../src/io/readCsv.ts";
import { readUnits, UNIT_COLUMN } from "../../../src/io/readUnits.ts";
import { expectPlain } from "../expectPlain.ts";
import { expectSame } from "../expectSame.ts";
import type { Reader } from "../fuzzed.ts";
import { TROUBLE, textBytes } from "../textBytes.ts";

const head = `${UNIT_COLUMN},date,births,note`;

export const unitsReader: Reader = {
	name: "sheets of many units",
	seeds: [
		`${head}\r\nNorth,2027-03-01,6,\r\nSouth,2027-03-01,,"two\r\nlines"\r\nNorth,2027-03-02,7,\r\n`,
		`${head.replaceAll(",", ";")}\n"North";2027-03-01;6,5;\n\n;2027-03-02;;\n`,
		head,
	].map(textBytes),
	words: [...TROUBLE, UNIT_COLUMN, "North", "South", ",", ";", '"', '""', "\n", "\r\n", "\r"].map(
		textBytes,
	),
	check(input) {
		const { units, problems } = readUnits([{ name: "births.csv", bytes: input }]);
		const decoded = decode("births.csv", input);
		const text = decoded.ok ? decoded.text : new TextDecoder().decode(input);
		expectPlain(problems, text);
		if (units.length === 0 && problems.length > 0) return;
		expectSameRecords(text);
		expectEveryRow(text, units, problems);
	},
};

type Units = ReturnType<typeof readUnits>;

/** The reader of long files finds what the reader of a sheet finds. */
function expectSameRecords(text: string): void {
	const { records, lineOf } = csvRecords(text);
	const { table, refused } = readCsv("births.csv", text);
	if (refused) return;
	const wanted = [table.header, ...table.rows].map((cells) => (cells.length === 0 ? [""] : cells));
	expectSame(records, text === "" ? [] : wanted, "read otherwise");
	const lines = records.slice(1).map((_, row) => lineOf(row + 1));
	expectSame(lines, table.lines ?? [], "in other lines");
}

/** Each row with text is one unit's, or named as nobody's. */
function expectEveryRow(text: string, units: Units["units"], problems: Units["problems"]): void {
	const owned = units.flatMap(({ workbook }) => workbook.tables["births.csv"]?.lines ?? []);
	const named = problems.flatMap(({ code, line }) => (code === "row-without-unit" ? [line] : []));
	const { table } = readCsv("births.csv", text);
	const all = table.rows.flatMap((cells, row) =>
		cells.some((cell) => cell.trim() !== "") ? [table.lines?.[row]] : [],
	);
	const found = new Set([...owned, ...named]);
	assert.ok(owned.length + named.length === found.size, "a row in two places");
	for (const line of all) assert.ok(found.has(line as number), `line ${line} is nobody's`);
}

import assert from "node:assert/strict";
import { unitDone } from "../../../src/cli/district/unitDone.ts";
import { plan } from "../../../src/core/plan/plan.ts";
import { monthTable } from "../../../src/core/plan/record/monthTable.ts";
import { readTable } from "../../../src/core/read/readTable.ts";
import { headerOf } from "../../../src/core/sheet.ts";
import { districtSheets } from "../../../src/core/sheets/districtSheets.ts";
import { typedSheets } from "../../../src/core/sheets/typedSheets.ts";
import { itemNames } from "../../../src/core/units/itemNames.ts";
import { computedCsv } from "../../../src/io/computedCsv.ts";
import { migrated } from "../../../src/io/migrated.ts";
import { readCsv } from "../../../src/io/readCsv.ts";
import { readFiles } from "../../../src/io/readFiles.ts";
import { expectPlain } from "../expectPlain.ts";
import { expectTable } from "../expectTable.ts";
import type { Reader } from "../fuzzed.ts";
import { sampleFile, sampleFiles } from "../sample.ts";
import { TROUBLE, textBytes } from "../textBytes.ts";

const FILES = [
	"uses.csv",
	"rounds-done.csv",
	"checks.csv",
	"placed.csv",
	"past-plans.csv",
	"records.csv",
	"kits.csv",
];
/** What is worked out from what was written down. */
const FROM_RECORDS = ["kit-register.csv", "scorecard.csv", "order.csv"];
const PROGRAM_WORDS = /\b(?:NaN|undefined|Infinity)\b|\[object/;
const TODAY = "2027-03-02";
const others = sampleFiles.map(({ name }) => ({
	name,
	bytes: name === "births.csv" ? sampleFile(name, 4) : sampleFile(name),
}));
const headers = typedSheets
	.filter(({ file }) => FILES.includes(file))
	.flatMap(({ columns }) => Object.keys(columns));

/** The first letter says which record the rest stands for. */
export const recordReader: Reader = {
	name: "records, and their unit in a district",
	seeds: FILES.map(
		(name, at) => new Uint8Array(Buffer.concat([Uint8Array.of(at), sampleFile(name, 9)])),
	),
	words: [
		...TROUBLE,
		",",
		";",
		"\n",
		'"',
		"K1",
		"K2",
		"used",
		"2027-03-01 07:00",
		"2027-02-28 23:59",
		"2027-02-28",
		"9999-12-31 24:00",
		"yes",
		"no",
		"1e9",
		...headers,
	].map(textBytes),
	slow: true,
	check(input) {
		const changed = FILES[(input[0] ?? 0) % FILES.length];
		const text = new TextDecoder().decode(input);
		const files = others.map(({ name, bytes }) => ({
			name,
			bytes: name === changed ? input.slice(1) : bytes,
		}));
		const read = readFiles(files);
		expectPlain(read.problems, text);
		for (const sheet of typedSheets) {
			const table = read.workbook.tables[sheet.file];
			if (table && sheet.file === changed) expectTable(table, readTable(sheet, table));
		}
		const made = plan(migrated(read.workbook), TODAY);
		expectPlain(made.problems, text);
		const written = FROM_RECORDS.map((file) => {
			const table = made.tables[file];
			assert.ok(table, `${file} is not made`);
			return computedCsv(table);
		});
		written.push(computedCsv(monthTable(migrated(read.workbook), "2027-02")));
		const done = unitDone("here", read, itemNames([]), TODAY);
		expectLines(done.lines);
		if (done.state === "not_read") assert.deepEqual([done.orders, done.months], [[], []]);
		const isOurs = !PROGRAM_WORDS.test(text);
		if (isOurs)
			assert.doesNotMatch([...written, ...Object.values(done.lines)].join(""), PROGRAM_WORDS);
	},
};

/** What a district keeps of a unit is rows of its lists, and one of its own whatever came. */
function expectLines(lines: Readonly<Record<string, string>>): void {
	for (const sheet of districtSheets) {
		const { table, problems } = readCsv(
			sheet.file,
			`${headerOf(sheet).join()}\r\n${lines[sheet.file] ?? ""}`,
		);
		assert.deepEqual(problems, []);
		for (const cells of table.rows) assert.equal(cells.length, table.header.length);
		if (sheet.file === "units.csv") assert.equal(table.rows.length, 1, "a unit without its row");
	}
}

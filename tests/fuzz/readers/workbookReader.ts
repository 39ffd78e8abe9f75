import assert from "node:assert/strict";
import { plan } from "../../../src/core/plan/plan.ts";
import { readTable } from "../../../src/core/read/readTable.ts";
import { typedSheets } from "../../../src/core/sheets/typedSheets.ts";
import { computedCsv, problemsCsv } from "../../../src/io/computedCsv.ts";
import { migrated } from "../../../src/io/migrated.ts";
import { readFiles } from "../../../src/io/readFiles.ts";
import { standardTable } from "../../../src/io/standardTable.ts";
import { zipWorkbook } from "../../../src/io/zipWorkbook.ts";
import { readZip } from "../../io/readZip.ts";
import { expectPlain } from "../expectPlain.ts";
import { expectSame } from "../expectSame.ts";
import { expectTable } from "../expectTable.ts";
import type { Reader } from "../fuzzed.ts";
import { sampleFile, sampleFiles } from "../sample.ts";
import { TROUBLE, textBytes } from "../textBytes.ts";

const names = sampleFiles.map(({ name }) => name);
const headers = typedSheets.map(({ columns }) => Object.keys(columns).join());
const PROGRAM_WORDS = /\b(?:NaN|undefined|Infinity)\b|\[object/;

/** The first letter says which file of the sample the rest stands for. */
export const workbookReader: Reader = {
	name: "workbook and its plan",
	seeds: names.map((name, at) => {
		const file = sampleFile(name, name === "unit.csv" ? 60 : 8);
		return new Uint8Array(Buffer.concat([Uint8Array.of(65 + at), file]));
	}),
	words: [
		...TROUBLE,
		",",
		";",
		"\n",
		'"',
		"in_service",
		"each_day",
		"0",
		"1e9",
		"2027-03-01",
		...headers,
	].map(textBytes),
	slow: true,
	check(input) {
		const changed = names[(input[0] ?? 0) % names.length];
		const files = sampleFiles.map(({ name, bytes }) => ({
			name,
			bytes: name === changed ? input.slice(1) : bytes,
		}));
		const text = new TextDecoder().decode(input);
		const { workbook, problems } = readFiles(files);
		expectPlain(problems, text);
		for (const sheet of typedSheets) {
			const table = workbook.tables[sheet.file];
			if (table) expectTable(table, readTable(sheet, table));
			else if (sheet.file === changed)
				assert.ok(
					problems.some(({ file }) => file === changed),
					"a file lost without a word",
				);
		}
		const made = plan(migrated(workbook));
		expectPlain(made.problems, text);
		const written = [
			...Object.values(made.tables).map(computedCsv),
			problemsCsv(made.problems),
		].join("");
		if (!PROGRAM_WORDS.test(text)) assert.doesNotMatch(written, PROGRAM_WORDS);
		const again = readZip(zipWorkbook(workbook)).workbook;
		const wanted = Object.entries(workbook.tables).map(([file, { header, rows }]) => [
			file,
			standardTable(file, { header, rows }),
		]);
		const found = wanted.map(([file]) => {
			const { header, rows } = again.tables[file as string] ?? { header: [], rows: [] };
			return [file, { header, rows }];
		});
		expectSame(found, wanted, "saved otherwise");
	},
};

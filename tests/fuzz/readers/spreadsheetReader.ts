import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { unzipSync } from "fflate";
import { MOST_COLUMNS, MOST_ROWS } from "../../../src/io/csvProblems.ts";
import { readSpreadsheet } from "../../../src/io/spreadsheets/readSpreadsheet.ts";
import { odsOf, xlsxOf } from "../../io/spreadsheets/xlsxOf.ts";
import { expectPlain } from "../expectPlain.ts";
import type { Reader } from "../fuzzed.ts";
import { TROUBLE, textBytes } from "../textBytes.ts";

const NO_NUMBER = /NaN|Infinity/;
const ODS = 0;
const XLSX = 1;
/** A small part of a spreadsheet, in front of it the letter that says of which kind. */
const seed = (kind: number, bytes: Uint8Array | undefined) =>
	new Uint8Array(Buffer.concat([Uint8Array.of(kind), bytes ?? new Uint8Array()]));
const styles = '<cellXfs><xf numFmtId="0"/><xf numFmtId="9"/><xf numFmtId="14"/></cellXfs>';
const xlsx = unzipSync(xlsxOf({ births: "" }, { styles, strings: "<si><t>a</t></si>" }));
const saved = unzipSync(
	new Uint8Array(
		readFileSync(fileURLToPath(new URL("../../io/locales/sample.ods", import.meta.url))),
	),
);

/** The sheet of a spreadsheet as its own program may have damaged it; its zip is another reader's. */
export const spreadsheetReader: Reader = {
	name: "spreadsheet",
	seeds: [
		seed(
			XLSX,
			textBytes(
				'<worksheet><sheetData><row r="1"><c r="A1" t="s"><v>0</v></c><c t="inlineStr"><is><t>b</t></is></c></row><row r="3"><c r="B3" s="1"><v>0.07</v></c><c s="2"><v>46447</v></c><c t="b"><v>1</v></c></row></sheetData></worksheet>',
			),
		),
		seed(
			ODS,
			unzipSync(
				odsOf({
					births:
						'<table:table-row><table:table-cell office:value-type="float" office:value="1.125"><text:p>1</text:p></table:table-cell></table:table-row>',
				}),
			)["content.xml"],
		),
		seed(ODS, saved["content.xml"]?.slice(0, 6000)),
	],
	words: [
		...TROUBLE,
		"<c",
		"</c>",
		"<row>",
		"<table:table-row>",
		'table:number-columns-repeated="1000000"',
		'table:number-rows-repeated="1000000"',
		'r="ZZZ9999999"',
		'r="A0"',
		"&#0;",
		"&amp;",
		"<![CDATA[",
		"]]>",
		"<!DOCTYPE x [<!ENTITY a 'aaaa'>]>",
		"1e999",
		"-1",
	].map(textBytes),
	check(input) {
		const bytes = input.slice(1);
		const parts =
			(input[0] ?? 0) % 2 === XLSX
				? { ...xlsx, "xl/worksheets/0.xml": bytes }
				: { "content.xml": bytes };
		const files = Object.entries(parts).map(([name, own]) => ({ name, bytes: own }));
		const { sheets, problems } = readSpreadsheet("x.xlsx", files);
		const written = Buffer.from(input).toString("latin1");
		expectPlain(problems, written);
		assert.ok(problems.length === 0 || sheets.length === 0, "refused, and yet read");
		for (const { table } of sheets) {
			assert.ok(table.rows.length <= MOST_ROWS);
			for (const cells of [table.header, ...table.rows]) {
				assert.ok(cells.length <= MOST_COLUMNS);
				for (const cell of cells) {
					assert.ok(typeof cell === "string");
					// What stands in the file as text stays; nothing else makes a number that is none.
					assert.ok(!NO_NUMBER.test(cell) || NO_NUMBER.test(written), cell);
				}
			}
		}
	},
};

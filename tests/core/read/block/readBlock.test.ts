import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { BlockTable, Customs } from "../../../../src/core/read/block/blockTable.ts";
import { readBlock } from "../../../../src/core/read/block/readBlock.ts";
import type { Sheet } from "../../../../src/core/sheet.ts";
import { itemsSheet } from "../../../../src/core/sheets/items.ts";
import { lotsSheet } from "../../../../src/core/sheets/lots.ts";
import { recordsSheet } from "../../../../src/core/sheets/records.ts";
import { unitSheet } from "../../../../src/core/sheets/unit.ts";
import { usesSheet } from "../../../../src/core/sheets/uses.ts";

/** A sheet with one column of texts. */
function only(
	sheet: Sheet,
	column: string,
	texts: readonly string[],
	separator?: BlockTable["separator"],
): BlockTable {
	const table = { header: [column], rows: texts.map((text) => [text]) };
	return { sheet, table, ...(separator ? { separator } : {}) };
}

/** What stands in the first column of each sheet afterwards, and how many questions are open. */
function readTexts(block: readonly BlockTable[], asked: Customs = {}) {
	const { tables, questions } = readBlock(block, asked);
	return { texts: tables.map(({ rows }) => rows.map(([text]) => text)), open: questions.length };
}

const quantities = (texts: readonly string[], separator?: BlockTable["separator"]) =>
	only(lotsSheet, "quantity", texts, separator);

describe("what a mark means is decided for the sheet", () => {
	test.each([
		["a decimal comma elsewhere", ["1.400", "0,5"], undefined, ["1400", "0.5"]],
		["a decimal point elsewhere", ["1,400", "0.5"], undefined, ["1400", "0.5"]],
		["a number with both marks", ["1.400", "12.345,5"], undefined, ["1400", "12345.5"]],
		["two marks between thousands", ["1.400", "1.234.567"], undefined, ["1400", "1234567"]],
		["a semicolon between cells", ["1.400", "7"], ";", ["1400", "7"]],
		["a semicolon, with a comma", ["1,400"], ";", ["1.400"]],
		["its own texts before its separator", ["1.400", "0.5"], ";", ["1.400", "0.5"]],
		["an American sheet", ["81,911", "2.5"], ",", ["81911", "2.5"]],
		["plain numbers", ["1400", "2.5", "0.125", ".5"], ",", ["1400", "2.5", "0.125", ".5"]],
	] as const)("by %s", (_, texts, separator, clear) => {
		expect(readTexts([quantities(texts, separator)])).toEqual({ texts: [[...clear]], open: 0 });
	});

	test("by what a column allows, where it allows one reading only", () => {
		// Births are whole numbers of at most some hundreds: neither 1.4 nor 1,400 is one; 2.5 kits are none either.
		const block = [only(itemsSheet, "lead_days", ["1.400"]), quantities(["2.600"])];
		expect(readTexts(block).texts).toEqual([["1.400"], ["2.600"]]);
		expect(readTexts(block).open).toBe(1);
		const alone = only(recordsSheet, "births", ["1.000"], undefined);
		expect(readTexts([alone]).texts).toEqual([["1.000"]]);
	});

	test("by the other sheets, where the sheet itself tells nothing", () => {
		expect(readTexts([quantities(["1.400"]), only(itemsSheet, "pack_price", ["2,50"])])).toEqual({
			texts: [["1400"], ["2.50"]],
			open: 0,
		});
	});
});

describe("spaces, apostrophes and signs", () => {
	test.each([
		["1 400", "1400"],
		["1\u00a0400,5", "1400.5"],
		["1\u202f400\u202f000", "1400000"],
		["1\u2009400.25", "1400.25"],
		["1'400", "1400"],
		["1’400,5", "1400.5"],
		["1 40", "1 40"],
		["14 00", "14 00"],
		["12.3456.7", "12.3456.7"],
		["many", "many"],
	])("a quantity %s is %s", (text, clear) => {
		expect(readTexts([quantities([text])]).texts).toEqual([[clear]]);
	});

	test.each([
		["pack_price", "4,50 €", "4.50"],
		["pack_price", "$ 4.50", "4.50"],
		["pack_price", "₦1,250.00", "1250.00"],
		["pack_size", "4,50 €", "4,50 €"],
		["wastage_pct", "12,5 %", "12.5"],
		["service_level", "95 %", "0.95"],
		["service_level", "97,5%", "0.975"],
		["service_level", "0,9", "0.9"],
		["lead_days", "95 %", "95 %"],
	])("%s %s is %s", (column, text, clear) => {
		expect(readTexts([only(itemsSheet, column, [text])]).texts).toEqual([[clear]]);
	});
});

describe("a question where both readings remain", () => {
	test("with both readings, and its answer settles the block", () => {
		const block = [quantities(["1.400", "7.250"], ",")];
		const { questions, tables } = readBlock(block);
		expect(questions).toEqual([
			{
				about: "numbers",
				place: { file: "lots.csv", line: 2, column: "quantity" },
				label: lotsSheet.columns.quantity.label,
				text: "1.400",
				readings: ["1.400", "1400"],
			},
		]);
		expect(tables[0]).toBe(block[0]?.table);
		expect(readTexts(block, { numbers: "comma" }).texts).toEqual([["1400", "7250"]]);
		expect(readTexts(block, { numbers: "point" }).texts).toEqual([["1.400", "7.250"]]);
	});

	test("texts of one sheet that contradict each other stand for themselves, and what is open is asked", () => {
		expect(readTexts([quantities(["0,5", "0.5", "7"])])).toEqual({
			texts: [["0.5", "0.5", "7"]],
			open: 0,
		});
		expect(readTexts([quantities(["0,5", "0.5", "1.400"])]).open).toBe(1);
		// What means nothing tells nothing.
		expect(readTexts([quantities(["many", "1.400"])]).open).toBe(1);
	});
});

describe("dates", () => {
	const days = (texts: readonly string[]) => only(recordsSheet, "date", texts);
	test.each([
		["a day beyond the twelfth", ["03/01/2027", "28/02/2027"], ["2027-01-03", "2027-02-28"]],
		["a month's place in front", ["03/01/2027", "02/28/2027"], ["2027-03-01", "2027-02-28"]],
		["points", ["03.01.2027"], ["2027-01-03"]],
		["the year in front", ["2027/1/3"], ["2027-01-03"]],
		["two digits, beside a year in full", ["3/1/27", "28/2/2027"], ["2027-01-03", "2027-02-28"]],
	])("by %s", (_, texts, clear) => {
		expect(readTexts([days(texts)])).toEqual({ texts: [clear], open: 0 });
	});

	test("asked once for the block, unless day and month are one number", () => {
		expect(readTexts([days(["03/03/2027"])])).toEqual({ texts: [["2027-03-03"]], open: 0 });
		const block = [days(["03/01/2027"]), only(lotsSheet, "made_on", ["05/01/2027"])];
		expect(readTexts(block).open).toBe(1);
		expect(readTexts(block, { dates: "day-first" }).texts).toEqual([
			["2027-01-03"],
			["2027-01-05"],
		]);
		expect(readTexts(block, { dates: "month-first" }).texts).toEqual([
			["2027-03-01"],
			["2027-05-01"],
		]);
	});

	test.each([
		["with a T between", "2027-03-01T14:00"],
		["with spaces between", "2027-03-01  14:00"],
		["on two lines", "about\n03/01/2027"],
		["after words with a fixed space", "about\u00a013/01/2027"],
	])("a moment %s stays as it is written", (_, text) => {
		const block = only(usesSheet, "at", [text]);
		const { tables, questions, rewritten } = readBlock([block]);
		expect(tables[0]).toBe(block.table);
		expect([questions, rewritten]).toEqual([[], []]);
	});

	test("a year of two digits without any other is not guessed", () => {
		expect(readTexts([days(["13/01/27"])])).toEqual({ texts: [["13/01/27"]], open: 0 });
	});

	test("a setting goes by its own kind", () => {
		const table = {
			header: ["key", "value"],
			rows: [
				["plan_start", "28.02.2027"],
				["births_per_day", "2,5"],
				["plan_confidence", "95 %"],
				["unit_name", "Ward 1.400"],
			],
		};
		const [read] = readBlock([{ sheet: unitSheet, table }]).tables;
		expect(read?.rows.map(([, value]) => value)).toEqual([
			"2027-02-28",
			"2.5",
			"0.95",
			"Ward 1.400",
		]);
	});
});

/** How the spreadsheets of some countries write numbers: decimal mark, and what parts the thousands. */
const COUNTRIES = [
	[".", ","],
	[",", "."],
	[",", "\u202f"],
	[",", "\u00a0"],
	[",", " "],
	[".", "'"],
	[".", "’"],
	[".", ""],
	[",", ""],
] as const;

function writtenIn([mark, between]: (typeof COUNTRIES)[number], value: number, digits: number) {
	const [whole = "", part] = value.toFixed(digits).split(".");
	const grouped = whole.replace(/\B(?=(\d{3})+$)/g, between);
	return part === undefined ? grouped : grouped + mark + part;
}

test("a text is read as what it was written from, or asked about: numbers × countries × separators", () => {
	const amount = fc.record({
		value: fc.double({ min: 0, max: 1e6, noNaN: true }),
		digits: fc.integer({ min: 0, max: 4 }),
	});
	fc.assert(
		fc.property(
			fc.array(amount, { minLength: 1, maxLength: 6 }),
			fc.constantFrom(...COUNTRIES),
			fc.constantFrom(undefined, ",", "\t", ";" as const),
			(amounts, country, separator) => {
				// Where commas are decimal a spreadsheet parts cells with semicolons; elsewhere it never does.
				fc.pre(separator !== ";" || country[0] === ",");
				const texts = amounts.map(({ value, digits }) => writtenIn(country, value, digits));
				const { tables, questions } = readBlock([
					quantities(texts, separator as BlockTable["separator"]),
				]);
				if (questions.length > 0) return;
				const read = tables[0]?.rows.map(([text]) => Number(text));
				expect(read).toEqual(amounts.map(({ value, digits }) => Number(value.toFixed(digits))));
			},
		),
		{ seed: 15, numRuns: 2000 },
	);
});

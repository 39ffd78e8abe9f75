import { describe, expect, test } from "vitest";
import type { BlockTable, Customs } from "../../../../src/core/read/block/blockTable.ts";
import { readBlock } from "../../../../src/core/read/block/readBlock.ts";
import type { Sheet } from "../../../../src/core/sheet.ts";
import { itemsSheet } from "../../../../src/core/sheets/items.ts";
import { keptSettingsSheet } from "../../../../src/core/sheets/keptSettings.ts";
import { lotsSheet } from "../../../../src/core/sheets/lots.ts";
import { unitSheet } from "../../../../src/core/sheets/unit.ts";
import { usesSheet } from "../../../../src/core/sheets/uses.ts";
import { tableOf } from "../../smallUnit.ts";

/** A block of one sheet, from lines of cells; what stands there afterwards, and how many texts are asked about. */
const block = (sheet: Sheet, text: string, more: Partial<BlockTable> = {}): BlockTable => ({
	sheet,
	table: tableOf(text),
	...more,
});
const read = (given: readonly BlockTable[], asked: Customs = {}, year?: number) => {
	const { tables, questions } = readBlock(given, asked, year);
	return { rows: tables.map(({ rows }) => rows.map((row) => row.join())), asked: questions.length };
};
const rowsOf = (sheet: Sheet, text: string, asked: Customs = {}, year?: number) =>
	read([block(sheet, text)], asked, year).rows[0];

describe("a day that a program keeps as a moment", () => {
	test.each([
		["28/02/2027 00:00", "2027-02-28"],
		["28/02/2027 0:00", "2027-02-28"],
		["28/02/2027  00:00:00", "2027-02-28"],
		["28/02/2027T00:00", "28/02/2027T00:00"],
		["2027-02-28 00:00:00", "2027-02-28"],
		["2027-02-28", "2027-02-28"],
		["28/02/2027 10:00", "28/02/2027 10:00"],
		["28/02/2027 00:00 h", "28/02/2027 00:00 h"],
		["28/02/2027\t10:00", "28/02/2027\t10:00"],
		["28/02/2027 100:00", "28/02/2027 100:00"],
		["2027-02-28 10:00", "2027-02-28 10:00"],
	])("is a day in a column of days: %s is %s", (text, clear) => {
		expect(rowsOf(lotsSheet, `made_on\n${text}`)).toEqual([clear]);
	});

	test.each([
		["28/02/2027 10:30", "2027-02-28 10:30"],
		[" 28/02/2027   10:30 ", "2027-02-28 10:30"],
		["28/02/2027 00:00", "2027-02-28 00:00"],
		["28/02/2027", "2027-02-28"],
		["2027-02-28 10:30", "2027-02-28 10:30"],
		["2027-02-28 00:00", "2027-02-28 00:00"],
		["2027-02-28T10:30", "2027-02-28T10:30"],
		["soon", "soon"],
		["soon 10:30", "soon 10:30"],
	])("keeps its time in a column of moments: %s is %s", (text, clear) => {
		expect(rowsOf(usesSheet, `kit,at\nA,${text}`)).toEqual([`A,${clear.trim()}`]);
	});

	test("is a text in a column of texts, and in one that nobody knows", () => {
		expect(rowsOf(usesSheet, "note,weather\n28/02/2027,28/02/2027")).toEqual([
			"28/02/2027,28/02/2027",
		]);
	});
});

describe("the year by which one of two digits is understood", () => {
	test.each([
		["of another day", "made_on,received_on\n3.1.27,2027/2/28", "2027-01-03,2027-02-28"],
		["of no other column", "made_on,quantity\n3.1.27,2027", "3.1.27,2027"],
		["of no number that is longer", "made_on,received_on\n3.1.27,12027", "3.1.27,12027"],
	])("is that %s", (_of, text, clear) => {
		expect(rowsOf(lotsSheet, text)).toEqual([clear]);
	});

	test("is that of a moment too, and else that of the plan", () => {
		const days = block(lotsSheet, "made_on\n3.1.27");
		expect(read([days, block(usesSheet, "at\n2027-02-28 10:00")]).rows[0]).toEqual(["2027-01-03"]);
		expect(read([days], {}, 1999).rows[0]).toEqual(["2027-01-03"]);
		expect(read([days], {}, 1960).rows[0]).toEqual(["1927-01-03"]);
	});
});

describe("what tells which mark is meant", () => {
	const open = (column: string) => block(itemsSheet, `${column}\n1.400`);
	test("a column that takes one reading only, and none where two columns contradict each other", () => {
		// Packs are whole, so 1.4 is none; of waste 1400 % is none.
		expect(read([open("depot_packs")])).toEqual({ rows: [["1400"]], asked: 0 });
		expect(read([open("wastage_pct")])).toEqual({ rows: [["1.400"]], asked: 0 });
		const both = block(itemsSheet, "depot_packs,wastage_pct\n1.400,1.400");
		expect(read([both])).toEqual({ rows: [["1.400,1.400"]], asked: 1 });
		expect(read([both], { numbers: "comma" })).toEqual({ rows: [["1400,1400"]], asked: 0 });
	});

	test("not other sheets that contradict each other, nor those with a point for a point that may part thousands", () => {
		const quantity = block(lotsSheet, "quantity\n1.400");
		const price = (text: string) => block(itemsSheet, `pack_price\n${text}`);
		expect(read([quantity, price("2;50".replace(";", "."))])).toMatchObject({ asked: 1 });
		const comma: BlockTable = {
			sheet: itemsSheet,
			table: { header: ["pack_price"], rows: [["2,50"]] },
		};
		expect(read([quantity, comma, price("2.50")])).toEqual({
			rows: [["1.400"], ["2.50"], ["2.50"]],
			asked: 1,
		});
		expect(read([quantity, comma, price("2.50")], { numbers: "comma" }).rows[0]).toEqual(["1400"]);
		const two: BlockTable = {
			sheet: lotsSheet,
			table: { header: ["quantity"], rows: [["1.400"], ["1,250"]] },
		};
		expect(read([two, price("2.50")])).toMatchObject({ asked: 1 });
	});

	test("a sheet with a point vouches for a comma between thousands", () => {
		const comma: BlockTable = {
			sheet: lotsSheet,
			table: { header: ["quantity"], rows: [["1,400"]] },
		};
		expect(read([comma, block(itemsSheet, "pack_price\n2.50")])).toMatchObject({
			rows: [["1400"], ["2.50"]],
			asked: 0,
		});
	});

	test("a sheet that this program saved has points: a comma in it was typed, and 1.400 was written elsewhere", () => {
		const of = (text: string, more: Partial<BlockTable> = {}): BlockTable => ({
			sheet: itemsSheet,
			table: { header: ["pack_price"], rows: [[text]] },
			...{ separator: ",", isOurs: true },
			...more,
		});
		// Its points tell nothing of other sheets, and none of its commas is asked about.
		expect(read([of("2.50"), of("1,250", { isOurs: false })]).asked).toBe(1);
		expect(read([of("2.50", { isOurs: false }), of("1,250", { isOurs: false })]).asked).toBe(0);
		expect(read([of("1,250")])).toEqual({ rows: [["1,250"]], asked: 0 });
		expect(read([of("1.250")])).toEqual({ rows: [["1.250"]], asked: 1 });
		// Saved by another program since, which put its own separator.
		expect(read([of("2.50", { separator: ";" }), of("1,250", { isOurs: false })]).asked).toBe(0);
		// What is taken in no form stays as it was typed.
		const kits = (isOurs: boolean): BlockTable => ({
			sheet: itemsSheet,
			table: { header: ["depot_packs"], rows: [["0,5"]] },
			...{ separator: ",", isOurs },
		});
		expect([read([kits(true)]).rows, read([kits(false)]).rows]).toEqual([[["0,5"]], [["0.5"]]]);
		expect(read([of("2,5")]).rows).toEqual([["2.5"]]);
	});

	// workbook-format.md: numbers with a decimal point on writing; a spreadsheet of other customs writes all of them anew.
	test("points that this program saved tell of the points beside them, and of no comma", () => {
		const ours = (sheet: Sheet, text: string, more: Partial<BlockTable> = {}) =>
			block(sheet, text, { separator: ",", isOurs: true, ...more });
		const prices = (...texts: string[]): BlockTable => ({
			...ours(itemsSheet, "pack_price"),
			table: { header: ["pack_price"], rows: texts.map((text) => [text]) },
		});
		expect(read([prices("1.250", "2.5")])).toEqual({ rows: [["1.250", "2.5"]], asked: 0 });
		expect(read([prices("1.250", "2.5", "1,250")])).toEqual({
			rows: [["1.250", "2.5", "1,250"]],
			asked: 0,
		});
		// A comma beside them is of other customs, and so may the point be.
		expect(read([prices("1.250", "2.5", "0,5")]).asked).toBe(1);
		expect(read([prices("1.250", "2,5")]).rows).toEqual([["1250", "2.5"]]);
		// By limits: 5125 births a day are none, of waste 1400 % is none, 1.4 packs are none.
		const births = ours(unitSheet, "key,value\nbirths_per_day,5.125");
		expect(read([births])).toEqual({ rows: [["births_per_day,5.125"]], asked: 0 });
		const both = ours(itemsSheet, "wastage_pct,pack_price\n1.400,1.400");
		expect(read([both])).toEqual({ rows: [["1.400,1.400"]], asked: 0 });
		expect(read([ours(itemsSheet, "depot_packs\n1.400")]).rows).toEqual([["1400"]]);
		// Other sheets tell nothing of it, and an answer still counts.
		expect(read([prices("2.5"), ours(lotsSheet, "quantity\n1.400")]).asked).toBe(1);
		expect(read([prices("1.250")], { numbers: "comma" }).rows).toEqual([["1250"]]);
	});

	test("a cell that was a number has a point, whatever stands around it", () => {
		const table = { header: ["quantity"], rows: [["1.400"], ["0,5"]] };
		const given = { sheet: lotsSheet, table, isNumber: (row: number) => row === 0 };
		expect(read([given])).toEqual({ rows: [["1.400", "0.5"]], asked: 0 });
		expect(read([{ sheet: lotsSheet, table }])).toEqual({ rows: [["1400", "0.5"]], asked: 0 });
	});
});

describe("what has been read anew", () => {
	test("is told place by place; all other cells stay as they were, and so does what was given", () => {
		const given = block(
			lotsSheet,
			"item,quantity,lot,weather,made_on\n a,1 400,L 1, 1 400,28.02.2027",
		);
		const before = structuredClone(given.table);
		const { tables, rewritten } = readBlock([given]);
		expect(tables[0]?.rows).toEqual([["a", "1400", "L 1", " 1 400", "2027-02-28"]]);
		expect(rewritten).toEqual([
			{ place: { file: "lots.csv", line: 2, column: "quantity" }, text: "1 400", clear: "1400" },
			{
				place: { file: "lots.csv", line: 2, column: "made_on" },
				text: "28.02.2027",
				clear: "2027-02-28",
			},
		]);
		expect(given.table).toEqual(before);
	});

	test("a date of two readings is asked about with both", () => {
		expect(readBlock([block(usesSheet, "at\n03/01/2027 10:30")]).questions).toEqual([
			{
				about: "dates",
				place: { file: "uses.csv", line: 2, column: "at" },
				label: usesSheet.columns.at.label,
				text: "03/01/2027 10:30",
				readings: ["2027-01-03 10:30", "2027-03-01 10:30"],
			},
		]);
	});

	test("a row that ends before its key is left as it is", () => {
		const table = { header: ["value", "key"], rows: [["28.02.2027"]] };
		expect(readBlock([{ sheet: unitSheet, table }]).tables[0]).toBe(table);
	});

	test("a column named like those of the settings is none in another sheet", () => {
		const text = "key,value\nplan_start,28.02.2027";
		expect(rowsOf(lotsSheet, text)).toEqual(["plan_start,28.02.2027"]);
		expect(rowsOf(lotsSheet, `item,plan_start,value\nplan_start,plan_start,28.02.2027`)).toEqual([
			"plan_start,plan_start,28.02.2027",
		]);
	});

	test("settings go by their own kinds, also those that are kept under a name; unknown ones stay", () => {
		const kept =
			"name,of,key,value\nnow,setting, plan_start ,28.02.2027\nnow,setting,no_such_key,28.02.2027";
		expect(rowsOf(keptSettingsSheet, kept)).toEqual([
			"now,setting, plan_start ,2027-02-28",
			"now,setting,no_such_key,28.02.2027",
		]);
		const table = {
			header: ["note", " key", "value "],
			rows: [
				["28.02.2027", "plan_start", "28.02.2027"],
				["", "unit_name"],
			],
		};
		expect(readBlock([{ sheet: unitSheet, table }])).toMatchObject({
			tables: [
				{
					rows: [
						["28.02.2027", "plan_start", "2027-02-28"],
						["", "unit_name"],
					],
				},
			],
			rewritten: [{ place: { column: "value" } }],
		});
	});
});

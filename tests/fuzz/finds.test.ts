import { describe, expect, test } from "vitest";
import { tablesIn } from "../../src/core/edit/tablesIn.ts";
import { plan } from "../../src/core/plan/plan.ts";
import { headerOf } from "../../src/core/sheet.ts";
import { orderSheet } from "../../src/core/sheets/order.ts";
import { clockList } from "../../src/core/values/clockList.ts";
import { lineOf } from "../../src/core/workbook.ts";
import { problemsCsv } from "../../src/io/computedCsv.ts";
import { LONGEST_CELL, MOST_CELLS, MOST_COLUMNS } from "../../src/io/csvProblems.ts";
import { dataPackage } from "../../src/io/dataPackage.ts";
import { decode } from "../../src/io/decode.ts";
import { migrated } from "../../src/io/migrated.ts";
import { readCsv } from "../../src/io/readCsv.ts";
import { readFiles } from "../../src/io/readFiles.ts";
import { readOrders } from "../../src/io/readOrders.ts";
import { readUnits } from "../../src/io/readUnits.ts";
import { zipWorkbook } from "../../src/io/zipWorkbook.ts";
import { clipboardText } from "../../src/ui/grid/clipboardText.ts";
import { pasted } from "../../src/ui/grid/pasted.ts";
import { settingsGrid } from "../../src/ui/grid/settingsGrid.ts";
import { typedGrid } from "../../src/ui/grid/typedGrid.ts";
import { Store } from "../../src/ui/state/store.ts";
import { valueIn } from "../core/planCells.ts";
import { readZip } from "../io/readZip.ts";
import { sampleFiles } from "./sample.ts";
import { textBytes } from "./textBytes.ts";
import { zipOf } from "./zipOf.ts";

const csv = (text: string) => readCsv("births.csv", text);
const codes = (problems: readonly { code: string; line: number | null }[]) =>
	problems.map(({ code, line }) => [code, line]);
/** The invented unit with one file of its own. */
const sampleWith = (name: string, text: string) =>
	readFiles([
		...sampleFiles.filter((file) => file.name !== name),
		{ name, bytes: textBytes(text) },
	]);

describe("CSV", () => {
	test.each([
		["a header that ends in CR, rows in LF", "item\rgauze\nsoap\n"],
		["a header that ends in LF, rows in CR", "item\ngauze\rsoap\r"],
		["CRLF, then CR", 'item\r\n"gauze"\rsoap\r\n'],
	])("lines that end in different ways do not run together: %s", (_what, text) => {
		const { table, problems } = csv(text);
		expect(table).toMatchObject({ rows: [["gauze"], ["soap"]], lines: [2, 3] });
		expect(problems).toEqual([]);
	});

	test("a stray quote mark spoils its own cell and swallows no row", () => {
		const { table, problems } = csv('a,b\n"5" tube",1\n"x\ny"z,2\n3,4\n');
		expect(table.rows).toEqual([
			['"5" tube"', "1"],
			['"x\ny"z', "2"],
			["3", "4"],
		]);
		expect(codes(problems)).toEqual([
			["loose-quote", 2],
			["loose-quote", 3],
		]);
	});

	test("two stray quote marks in one row are one problem, and none of the next row", () => {
		const { table, problems } = csv('a,b\n"x"y,"z"w\n1,2\n');
		expect(table.rows[1]).toEqual(["1", "2"]);
		expect(codes(problems)).toEqual([["loose-quote", 2]]);
	});

	test("half a million stray quote marks before as many blanks are one cell, said so", () => {
		const { table, problems } = csv(`a\n"x${'" '.repeat(5e5)}${" ".repeat(5e5)}\n`);
		expect(table.rows[0]?.[0]).toHaveLength(1.5e6 + 2);
		expect(problems.map(({ code }) => code)).toEqual(["loose-quote", "long-cell"]);
	});

	test("too many columns or cells are refused before they fill the memory", () => {
		const columns = (n: number) => csv(Array.from({ length: n }, (_, i) => `c${i}`).join());
		expect(columns(MOST_COLUMNS).problems).toEqual([]);
		expect(codes(columns(MOST_COLUMNS + 1).problems)).toEqual([["too-many-columns", 1]]);
		expect(codes(csv(`a\n${",".repeat(MOST_CELLS + 1)}`).problems)).toEqual([["too-large", null]]);
		const { workbook, problems } = readFiles([
			{ name: "births.csv", bytes: textBytes(",".repeat(2000)) },
		]);
		expect(workbook.tables).toEqual({});
		expect(problems.map(({ code, weight }) => [code, weight])).toEqual([
			["too-many-columns", "error"],
		]);
	});

	test("a column keeps its values where its name stands with blanks around it", () => {
		const { workbook } = readFiles([
			{ name: "births.csv", bytes: textBytes("date, births , note\n2027-03-01,6,x\n") },
		]);
		const { state } = new Store(workbook);
		const grid = typedGrid(state, "births.csv");
		expect(grid.columns.map(({ key }) => key)).toEqual(["date", "births", "note"]);
		expect(grid.cell(0, 1).text).toBe("6");
	});

	test("a message never cuts a letter in two", () => {
		const { problems } = csv(`a,${"x".repeat(59)}👶👶\n,${"y".repeat(LONGEST_CELL + 1)}\n`);
		expect(problems).toHaveLength(1);
		expect(problems[0]?.message.isWellFormed()).toBe(true);
		const [long] = problemsCsv([
			{
				...(problems[0] as never as Parameters<typeof problemsCsv>[0][0]),
				message: "👶".repeat(5000),
			},
		]).split("…", 1);
		expect(long?.isWellFormed()).toBe(true);
	});
});

describe("encodings", () => {
	test.each(["utf16le", "big end first"])("UTF-16 without its mark is read: %s", (kind) => {
		const bytes = new Uint8Array(Buffer.from("date,births\n", "utf16le"));
		const given = kind === "utf16le" ? bytes : Uint8Array.of(0, ...bytes.subarray(0, -1));
		expect(decode("x.csv", given)).toEqual({ ok: true, text: "date,births\n" });
	});

	test("UTF-16 behind a UTF-8 mark is read as what it is", () => {
		const mark = Uint8Array.of(0xef, 0xbb, 0xbf);
		const text = Buffer.from("kit,kind\r\nK1,bag\r\n", "utf16le").swap16();
		const bytes = Uint8Array.from([...mark, ...text]);
		expect(decode("kits.csv", bytes)).toEqual({ ok: true, text: "kit,kind\r\nK1,bag\r\n" });
	});

	test("a short text with two NULs is none in UTF-16, and comes back as it was", () => {
		const given = readFiles([{ name: "births.csv", bytes: textBytes("\0-\0") }]).workbook;
		expect(given.tables["births.csv"]?.header).toEqual(["\0-\0"]);
		const saved = readZip(zipWorkbook(given)).workbook;
		expect(saved.tables["births.csv"]?.header).toEqual(["\0-\0"]);
	});

	test("the line of a bad letter is right also after a replaced letter", () => {
		const bytes = Uint8Array.of(...textBytes("a\n\ufffd\nb\n"), 0xe9, 10);
		expect(decode("x.csv", bytes)).toMatchObject({ ok: true, advice: { line: 4 } });
	});

	test("two files that differ in one byte beyond UTF-8 are not the same order twice", () => {
		const files = [0xff, 0xfe].map((byte, i) => ({
			name: `${i}.csv`,
			bytes: Uint8Array.of(97, byte),
		}));
		const told = readOrders(files).problems.map(({ code, file }) => [code, file]);
		expect(told).toContainEqual(["read-as-windows-1252", "0.csv"]);
		expect(told).toContainEqual(["read-as-windows-1252", "1.csv"]);
		expect(told.map(([code]) => code)).not.toContain("same-order-twice");
	});
});

describe("names of the language as names of columns and settings", () => {
	const names = ["constructor", "toString", "__proto__", "hasOwnProperty"];

	test.each(names)("%s as a column: kept, shown, described and saved", (name) => {
		const { workbook } = readFiles([
			{ name: "births.csv", bytes: textBytes(`date,births,note,${name}\n2027-03-01,6,,x\n`) },
		]);
		expect(dataPackage(workbook)).toContain(`"${name}"`);
		expect(readZip(zipWorkbook(workbook)).workbook.tables["births.csv"]?.rows).toEqual([
			["2027-03-01", "6", "", "x"],
		]);
		expect(
			typedGrid(new Store(workbook).state, "births.csv").columns.map(({ key }) => key),
		).toContain(name);
	});

	test.each(names)("%s as a setting: named, and shown among the settings", (name) => {
		const { workbook } = readFiles([
			{ name: "unit.csv", bytes: textBytes(`key,value\n${name},5\n`) },
		]);
		const { state } = new Store(workbook);
		expect(state.plan.problems.map(({ code }) => code)).toContain("unknown-setting");
		const grid = settingsGrid(state);
		const shown = Array.from({ length: grid.rowCount }, (_, row) => grid.cell(row, 0).text);
		expect(shown).toContain(name);
	});
});

describe("very many bad rows", () => {
	test.each([
		["kits.csv", "kit,kind,status,ready_since,note", "x,,?,?,"],
		["chlorine.csv", "product,form,strength,strength_unit,in_use", "x,?,?,?,?"],
		["hours.csv", "hour,share", "?,?"],
		["rounds.csv", "start,label", "?,"],
		["usage.csv", "item,basis,quantity,note", ",?,?,"],
	])("in %s: a plan with reasons, none of which travels a thousandfold", (name, header, row) => {
		const { workbook } = sampleWith(name, `${header}\n${`${row}\n`.repeat(3000)}`);
		const made = plan(migrated(workbook));
		expect(made.made).toBe(false);
		expect(made.problems.filter(({ file }) => file === name).length).toBeGreaterThanOrEqual(3000);
		for (const { rows } of Object.values(made.tables))
			for (const cells of rows)
				for (const { outcome } of Object.values(cells))
					if (!outcome.ok) expect(outcome.problems.length).toBeLessThanOrEqual(40);
	});

	test("the same row 5,000 times is named without listing 5,000 lines each time", () => {
		const { workbook } = sampleWith(
			"births.csv",
			`date,births,note\n${"2027-03-01,6,\n".repeat(5000)}`,
		);
		const doubled = plan(workbook).problems.filter(({ code }) => code === "doubled-row");
		expect(doubled).toHaveLength(5000);
		expect(doubled[0]?.message).toContain("5000 lines");
		expect(doubled[0]?.message.length).toBeLessThan(200);
	});

	test("of an order file are all named", () => {
		const columns = headerOf(orderSheet);
		const row = columns.map(() => "?").join();
		const bytes = textBytes(`${columns.join()}\n${`${row}\n`.repeat(15_000)}`);
		// More than a call can take as its arguments.
		expect(readOrders([{ name: "a.csv", bytes }]).problems.length).toBeGreaterThan(150_000);
	});
});

describe("the rest", () => {
	test("a list of times that is too long loses none of them: it is refused", () => {
		const times = `03:10${" ".repeat(4990)}14:25 15:00`;
		expect(clockList().schema.safeParse(times).success).toBe(false);
		expect(clockList().schema.parse("03:10 14:25")).toEqual([190, 865]);
	});

	test("a strength wanted that cannot be read leaves the stock ahead without an answer", () => {
		const { workbook } = sampleWith(
			"unit.csv",
			"key,value\nplan_start,2027-03-01\ntarget_strength_pct,.\n",
		);
		const { rows } = plan(workbook).tables["stock-ahead.csv"] ?? { rows: [] };
		const bleach = rows.filter((row) => valueIn(row.item) === "Liquid bleach 3.5 %");
		expect(bleach.length).toBeGreaterThan(0);
		for (const { usable } of bleach)
			expect(usable?.outcome).toMatchObject({
				ok: false,
				problems: [{ file: "unit.csv", line: 3 }],
			});
	});

	test("rows of a set that names the unit and no other column are not lost", () => {
		const bytes = textBytes("unit_name\nNorth,2027-03-01,6\n");
		const [north] = readUnits([{ name: "births.csv", bytes }]).units;
		expect(north?.workbook.tables["births.csv"]?.rows).toEqual([["2027-03-01", "6"]]);
		expect(plan(north?.workbook ?? { tables: {} }).problems.map(({ code }) => code)).toContain(
			"empty-file",
		);
	});

	test("a zip stored in a zip is no second end of it", () => {
		const inner = zipOf([{ name: "notes.csv", contents: textBytes("a\n") }]);
		const births = { name: "births.csv", contents: textBytes("date,births,note\n") };
		const { workbook, problems } = readZip(
			zipOf([births, { name: "old.zip", contents: inner, method: 0 }]),
		);
		expect(Object.keys(workbook.tables)).toEqual(["births.csv"]);
		expect(problems.map(({ code }) => code)).toEqual(["unknown-file"]);
	});

	test.each([
		["never closed", '"abc\td\n1\t2\n', ['"abc', "d", "1", "2"]],
		["closed too early", '"5" tube\td\n', ['"5" tube', "d"]],
	])("pasted text with a quote mark %s stands as it is", (_what, text, cells) => {
		expect(pasted(text, 0, 0, 5)).toMatchObject({
			cells: cells.map((cell) => ({ text: cell })),
			told: [],
		});
	});

	test("a blank cell that is copied blanks the cell it is pasted into", () => {
		expect(pasted(clipboardText([[""]], 0, 0, 0, 0), 4, 2, 5).cells).toEqual([
			{ row: 4, column: 2, text: "" },
		]);
		expect(pasted(clipboardText([["x"], [""]], 0, 0, 1, 0), 0, 0, 5).cells).toHaveLength(2);
		expect(pasted("", 0, 0, 5)).toEqual({ cells: [], told: [] });
	});

	test.each([[[Number.POSITIVE_INFINITY]], [["2"]], [[0]], ["2"], [{}]])(
		"a draft whose line numbers are %j counts them anew",
		(lines) => {
			const kept = { tables: { "rounds.csv": { header: ["start"], rows: [["07:00"]], lines } } };
			const table = tablesIn(kept).tables["rounds.csv"] ?? { header: [], rows: [] };
			expect([table.rows, lineOf(table, 0)]).toEqual([[["07:00"]], 2]);
		},
	);

	test("a draft of an impossible edition is read all the same", () => {
		expect(migrated({ tables: {}, format: Number.NEGATIVE_INFINITY }).tables).toEqual({});
	});
});

import { describe, expect, test } from "vitest";
import { readFiles } from "../../../src/io/readFiles.ts";
import { readSpreadsheet } from "../../../src/io/spreadsheets/readSpreadsheet.ts";
import { unzip } from "../../../src/io/unzip.ts";
import { zipFiles } from "../../../src/io/zipFiles.ts";
import { odsOf, xlsxOf } from "./xlsxOf.ts";

const sheetsIn = (bytes: Uint8Array) =>
	readSpreadsheet("a.xlsx", unzip("a.xlsx", bytes).files).sheets;
const rowsIn = (bytes: Uint8Array) =>
	sheetsIn(bytes).map(({ table }) => [table.header, ...table.rows]);
const read = (name: string, bytes: Uint8Array, ...more: { name: string; bytes: Uint8Array }[]) =>
	readFiles([{ name, bytes }, ...more]);
const text = (words: string) => `<c t="inlineStr"><is><t>${words}</t></is></c>`;
const row = (...cells: string[]) => `<row>${cells.join("")}</row>`;
const header = (...keys: string[]) => row(...keys.map(text));
const percent = '<cellXfs><xf numFmtId="0"/><xf numFmtId="9"/><xf numFmtId="14"/></cellXfs>';

describe(".xlsx", () => {
	test("texts of every kind, and cells where they stand", () => {
		const cells = [
			'<row r="2"><c r="B2" t="s"><v>0</v></c><c r="D2" t="str"><f>A1</f><v>by formula</v></c></row>',
			'<row r="5"><c r="A5" t="b"><v>1</v></c><c t="e"><v>#N/A</v></c><c r="C5"><f>1/0</f></c></row>',
		];
		const strings =
			"<si><r><t>two </t></r><r><t>parts &amp; more</t></r><rPh><t>not this</t></rPh></si>";
		const [sheet] = sheetsIn(xlsxOf({ any: cells.join("") }, { strings }));
		expect(sheet?.table).toEqual({
			header: ["", "two parts & more", "", "by formula"],
			rows: [[], [], ["TRUE", "#N/A", "=1/0"]],
			lines: [3, 4, 5],
		});
	});

	test.each(["NaN", "Infinity", "-1e999"])("%s is no number: it stays the text it is", (value) => {
		const cells = row(`<c><v>${value}</v></c>`, `<c s="1"><v>${value}</v></c>`);
		const bytes = xlsxOf({ births: header("date", "births") + cells }, { styles: percent });
		expect(rowsIn(bytes)[0]).toEqual([
			["date", "births"],
			[value, value],
		]);
		const { tables } = read("births.xlsx", bytes).workbook;
		expect(tables["births.csv"]?.rows).toEqual([[value, value]]);
	});

	test("numbers, shares in percent and days by their format", () => {
		const cells = row(
			"<c><v>1.125</v></c>",
			'<c s="1"><v>7.0000000000000007E-2</v></c>',
			'<c s="2"><v>39448</v></c>',
			'<c t="d"><v>2027-03-01T21:15:00Z</v></c>',
		);
		const [sheet] = sheetsIn(xlsxOf({ any: row(text("a")) + cells }, { styles: percent }));
		expect(sheet?.table.rows).toEqual([["1.125", "7%", "2008-01-01", "2027-03-01 21:15:00"]]);
		expect([sheet?.isNumber(0, 0), sheet?.isNumber(0, 4)]).toEqual([true, false]);
	});

	test("a text that a spreadsheet would run loses its guard, as in CSV", () => {
		expect(rowsIn(xlsxOf({ any: row(text("'=1+1")) }))).toEqual([[["=1+1"]]]);
	});

	test.each([
		["far to the right", '<row><c r="ZZZ1"><v>1</v></c></row>', "too-large"],
		["far below", '<row r="1048576"><c><v>1</v></c></row>', "too-large"],
		["no XML", "<row><c></row", "damaged-spreadsheet"],
	])("%s is refused with a word", (_what, cells, code) => {
		expect(read("records.xlsx", xlsxOf({ any: cells })).problems).toMatchObject([{ code }]);
	});
});

describe(".ods", () => {
	const cell = (type: string, value: string, shown = "") =>
		`<table:table-cell office:value-type="${type}" ${value} calcext:value-type="string"><text:p>${shown}</text:p></table:table-cell>`;

	test("values by their kind, not as they are shown", () => {
		const cells = [
			cell("float", 'office:value="1.125"', "1,13"),
			cell("percentage", 'office:value="0.07"', "7 %"),
			cell("currency", 'office:value="4.5"', "4,50 €"),
			cell("date", 'office:date-value="2027-03-01"', "01.03.27"),
			cell("date", 'office:date-value="2027-03-01T21:15:00"'),
			cell("time", 'office:time-value="PT07H30M00S"', "7:30"),
			cell("string", "", "a<text:s text:c='2'/>b</text:p><text:p>c"),
		];
		expect(rowsIn(odsOf({ any: `<table:table-row>${cells.join("")}</table:table-row>` }))).toEqual([
			[["1.125", "7%", "4.5", "2027-03-01", "2027-03-01 21:15:00", "07:30", "a  b\nc"]],
		]);
	});

	test("rows and cells that are repeated; blank ones to the end of the sheet are nothing", () => {
		const rows = `<table:table-row table:number-rows-repeated="2"><table:table-cell table:number-columns-repeated="2"/>${cell("string", "", "x").replace("<table:table-cell", '<table:table-cell table:number-columns-repeated="2"')}<table:table-cell table:number-columns-repeated="16380"/></table:table-row><table:table-row table:number-rows-repeated="1048574"><table:table-cell table:number-columns-repeated="16384"/></table:table-row>`;
		expect(rowsIn(odsOf({ any: rows }))).toEqual([
			[
				["", "", "x", "x"],
				["", "", "x", "x"],
			],
		]);
	});

	test("a note on a cell is not its text", () => {
		const noted = `<table:table-row><table:table-cell office:value-type="string"><office:annotation><text:p>who wrote it</text:p></office:annotation><text:p>K1</text:p></table:table-cell></table:table-row>`;
		expect(rowsIn(odsOf({ any: noted }))).toEqual([[["K1"]]]);
	});

	test.each([
		['value-type="float"', "", [""]],
		['value-type="float" office:value=""', "", [""]],
		['value-type="float" office:value="1,5"', "1.5", ["1,5"]],
		['value-type="currency" office:value="1e999"', "", ["1e999"]],
		['value-type="percentage" office:value="x"', "7 %", ["x"]],
	])(
		"a number that is damaged stays as it is, and one that is missing is no 0: %s",
		(type, shown, cells) => {
			const damaged = `<table:table-cell office:${type}><text:p>${shown}</text:p></table:table-cell>`;
			const kept = '<table:table-cell office:value-type="float" office:value="2"/>';
			const rows = `<table:table-row>${kept}</table:table-row><table:table-row>${damaged}${kept}</table:table-row>`;
			expect(rowsIn(odsOf({ any: rows }))).toEqual([[["2"], [...cells, "2"]]]);
		},
	);
});

describe("which sheet it is", () => {
	const births =
		header("date", "births", "note") + row('<c s="2"><v>46447</v></c>', "<c><v>6</v></c>");
	const rows = [["2027-03-01", "6"]];

	test.each([
		["by the file's name", "births.xlsx", "Sheet1"],
		["by the sheet's name", "ward.xlsx", "births"],
		["by its first row", "ward.xlsx", "Tabelle1"],
	])("%s", (_what, file, sheet) => {
		const { workbook, problems } = read(file, xlsxOf({ [sheet]: births }, { styles: percent }));
		expect(workbook.tables["births.csv"]?.rows).toEqual(rows);
		expect(problems).toEqual([]);
	});

	test("each sheet of a workbook; blank ones go without a word, strange ones with advice", () => {
		const bytes = xlsxOf(
			{ births, rounds: header("start", "label"), Sheet3: "", notes: row(text("call Ann")) },
			{ styles: percent },
		);
		const { workbook, problems } = read("ward.xlsx", bytes);
		expect(Object.keys(workbook.tables)).toEqual(["births.csv", "rounds.csv"]);
		expect(problems).toMatchObject([
			{ code: "unknown-file", weight: "advice", received: "ward.xlsx (notes)" },
		]);
	});

	test("a sheet that looks like one and lacks columns is an error", () => {
		const { problems } = read("ward.xlsx", xlsxOf({ Sheet1: header("date", "births") }));
		expect(problems[0]).toMatchObject({ code: "unread-sheet", weight: "error" });
	});

	test("two that claim the same sheet are asked, by the names they have", () => {
		const csv = new TextEncoder().encode("date,births,note\n2027-03-01,7,\n");
		const { questions } = read("ward.xlsx", xlsxOf({ births }, { styles: percent }), {
			name: "births.csv",
			bytes: csv,
		});
		expect(questions).toEqual([
			{ about: "file", file: "births.csv", names: ["births.csv", "ward.xlsx"] },
		]);
	});

	test("in a zip", () => {
		const bytes = zipFiles({ "unit/births.xlsx": xlsxOf({ x: births }, { styles: percent }) });
		expect(read("unit.zip", bytes).workbook.tables["births.csv"]?.rows).toEqual(rows);
	});

	test("an old workbook that only its own program reads is an error where it is named after a sheet", () => {
		const xls = { name: "records.xls", bytes: new Uint8Array([0xd0, 0xcf, 0x11, 0xe0]) };
		expect(readFiles([xls]).problems[0]).toMatchObject({ code: "unread-sheet", weight: "error" });
	});
});

test("a number is a number whatever the texts beside it, and a share in percent is not wrong by 100", () => {
	const columns = "item,group,measure,pack_size,pack_price,lead_days,wastage_pct,service_level";
	const cells = row(
		...["Liquid soap", "other", "mL"].map(text),
		text("1.000"),
		"<c><v>1.125</v></c>",
		"<c><v>7</v></c>",
		'<c s="1"><v>0.05</v></c>',
		'<c s="1"><v>0.95</v></c>',
	);
	const bytes = xlsxOf({ items: header(...columns.split(",")) + cells }, { styles: percent });
	const asked = read("items.xlsx", bytes);
	expect(asked.questions).toMatchObject([{ about: "numbers", text: "1.000" }]);
	const { workbook } = readFiles([{ name: "items.xlsx", bytes }], { numbers: "comma" });
	expect(workbook.tables["items.csv"]?.rows).toEqual([
		["Liquid soap", "other", "mL", "1000", "1.125", "7", "5", "0.95"],
	]);
});

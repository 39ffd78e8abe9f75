import { describe, expect, test } from "vitest";
import { plan } from "../../src/core/plan/plan.ts";
import type { Workbook } from "../../src/core/workbook.ts";
import { readUnits } from "../../src/io/readUnits.ts";
import { writeCsv } from "../../src/io/writeCsv.ts";
import { smallUnit } from "../core/smallUnit.ts";

const bytesOf = (text: string) => new TextEncoder().encode(text);
const setOf = (files: Record<string, string>) =>
	Object.entries(files).map(([name, text]) => ({ name, bytes: bytesOf(text) }));
const codes = ({ problems }: ReturnType<typeof readUnits>) => problems.map((p) => p.code);

/** The files of some workbooks one after the other, each row with its unit's name in front. */
function concatenated(units: Readonly<Record<string, Workbook>>) {
	const files = Object.entries(Object.values(units)[0]?.tables ?? {});
	return files.map(([name, { header }]) => {
		const rows = Object.entries(units).flatMap(([unit, { tables }]) =>
			(tables[name]?.rows ?? []).map((cells) => [unit, ...cells]),
		);
		return { name, bytes: bytesOf(writeCsv({ header: ["unit_name", ...header], rows })) };
	});
}

describe("a set of many units' files", () => {
	const two = setOf({
		"births.csv":
			"unit_name,date,births,note\nA,2027-03-01,4,\nB,2027-03-01,5,\nA,2027-03-02,6,x\n",
		"kits.csv": "unit_name,kit,kind,status,ready_since,note\r\nB,K1,bag set,in_service,,\r\n",
	});

	test("gives each unit its rows, in their order and with their lines", () => {
		const { units, problems } = readUnits(two);
		expect(problems).toEqual([]);
		expect(units.map(({ name }) => name)).toEqual(["A", "B"]);
		expect(units[0]?.workbook.tables["births.csv"]).toEqual({
			header: ["date", "births", "note"],
			rows: [
				["2027-03-01", "4", ""],
				["2027-03-02", "6", "x"],
			],
			lines: [2, 4],
		});
		expect(units[1]?.workbook.tables["kits.csv"]?.rows).toEqual([
			["K1", "bag set", "in_service", "", ""],
		]);
	});

	test("as a program in Germany saves and names them, in one custom", () => {
		const { units, problems, questions } = readUnits(
			setOf({
				"lots (1).csv":
					"unit_name;item;lot;quantity;received_on\r\nA;Soap;1;1.400;01.02.2027\r\nB;Soap;2;0,5;02.02.2027\r\n",
				"births.csv": "unit_name,date,births,note\nA,2027-03-01,4,\n",
			}),
		);
		expect(questions).toEqual([]);
		expect(problems.map(({ code }) => code)).toEqual(["rewritten"]);
		expect(units[0]?.workbook.tables["lots.csv"]).toEqual({
			header: ["item", "lot", "quantity", "received_on"],
			rows: [["Soap", "1", "1400", "2027-02-01"]],
			lines: [2],
		});
		expect(units[1]?.workbook.tables["lots.csv"]?.rows).toEqual([
			["Soap", "2", "0.5", "2027-02-02"],
		]);
	});

	test("what is left open is asked, and the answer read", () => {
		const files = setOf({
			"lots.csv": "unit_name,item,lot,quantity\nA,Soap,1,1.400\nB,Soap,1,2\n",
		});
		const open = readUnits(files);
		expect(open.questions).toMatchObject([
			{ about: "numbers", text: "1.400", place: { file: "lots.csv", line: 2 } },
		]);
		expect(open.problems).toMatchObject([{ code: "two-numbers", weight: "error" }]);
		const { units, questions } = readUnits(files, { numbers: "comma" });
		expect(questions).toEqual([]);
		expect(units[0]?.workbook.tables["lots.csv"]?.rows).toEqual([["Soap", "1", "1400"]]);
	});

	test("two files that say they are one sheet are asked", () => {
		const { questions } = readUnits([
			...two,
			...setOf({ "births - Copy.csv": "unit_name,date,births,note\nA,2027-03-01,9,\n" }),
		]);
		expect(questions).toEqual([
			{ about: "file", file: "births.csv", names: ["births.csv", "births - Copy.csv"] },
		]);
	});

	test("a unit without rows in a file has the file, empty", () => {
		expect(readUnits(two).units[0]?.workbook.tables["kits.csv"]).toEqual({
			header: ["kit", "kind", "status", "ready_since", "note"],
			rows: [],
			lines: [],
		});
	});

	test("a row with text and no unit is named with its line, and a blank one is passed over", () => {
		const read = readUnits(
			setOf({ "births.csv": 'unit_name,date,births,note\n\n ,,,\n"",2027-03-01,4,\nA,,,\n' }),
		);
		expect(read.problems).toMatchObject([
			{ code: "row-without-unit", file: "births.csv", line: 4, received: ", 2027-03-01, 4, " },
		]);
		expect(read.units.map(({ name }) => name)).toEqual(["A"]);
	});

	test("spaces round a name do not make another unit", () => {
		const { units } = readUnits(
			setOf({ "births.csv": " unit_name ,date\nA,2027-03-01\n A ,2027-03-02\n" }),
		);
		expect(units.map(({ name }) => name)).toEqual(["A"]);
		expect(units[0]?.workbook.tables["births.csv"]?.rows).toHaveLength(2);
	});

	test.each([
		["without the column", { "births.csv": "date,unit_name\n2027-03-01,A\n" }, ["no-unit-column"]],
		["of another name", { "order.csv": "unit_name,item\nA,x\n" }, ["unknown-file"]],
		["that is empty", { "births.csv": "" }, ["no-unit-column"]],
		[
			"with very many columns",
			{ "kits.csv": `unit_name${",x".repeat(1001)}` },
			["too-many-columns"],
		],
	])("nothing is read from a file %s", (_what, files, found) => {
		const read = readUnits(setOf(files as Record<string, string>));
		expect(codes(read)).toEqual(found);
		expect(read.units).toEqual([]);
	});

	test("nothing is read from a file that is there twice, or is no text", () => {
		const file = { name: "births.csv", bytes: bytesOf("unit_name,date\nA,2027-03-01\n") };
		expect(codes(readUnits([file, { ...file, name: "Births.csv" }]))).toEqual(["doubled-file"]);
		const photo = { name: "births.csv", bytes: Uint8Array.of(0xff, 0xd8, 0xff, 0xe0, 0x00) };
		expect(codes(readUnits([photo]))).toEqual(["not-text"]);
	});

	test("a quote mark that encloses no cell is named with its line, and its text is kept", () => {
		const read = readUnits(
			setOf({ "births.csv": 'unit_name,note\nA,"two\nlines"\nB,"so" much\nC,"open\nD,x' }),
		);
		expect(read.problems).toMatchObject([
			{ code: "loose-quote", line: 4 },
			{ code: "unclosed-quote", line: 5 },
		]);
		expect(read.units.map(({ workbook }) => workbook.tables["births.csv"])).toMatchObject([
			{ rows: [["two\nlines"]], lines: [2] },
			{ rows: [['"so" much']], lines: [4] },
			{ rows: [['"open\nD,x']], lines: [5] },
		]);
	});

	test("a very long cell is named and kept", () => {
		const long = "x".repeat(100_001);
		const read = readUnits(setOf({ "births.csv": `unit_name,note\nA,\nA,${long}\n` }));
		expect(read.problems).toMatchObject([{ code: "long-cell", line: 3, column: "note" }]);
		expect(read.units[0]?.workbook.tables["births.csv"]?.rows[1]).toEqual([long]);
	});

	test("a problem of a unit's plan names the line of the set's file", () => {
		const births = "date,births,note\n2027-03-01,4,\n2027-03-02,5,";
		const given = {
			A: smallUnit({ "births.csv": births }),
			B: smallUnit({ "births.csv": births.replace("5", "many") }),
			C: smallUnit(),
		};
		const { units } = readUnits(concatenated(given));
		expect(plan(units[1]?.workbook as Workbook).problems[0]).toMatchObject({
			code: "bad-cell",
			file: "births.csv",
			line: 5,
			received: "many",
		});
		const withoutLines = (workbook: Workbook) =>
			plan(workbook).problems.map(({ line: _, ...problem }) => problem);
		expect(withoutLines(units[2]?.workbook as Workbook)).toEqual(withoutLines(smallUnit()));
	});
});

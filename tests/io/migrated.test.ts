import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { planFiles } from "../../src/cli/planFiles.ts";
import { type Plan, plan } from "../../src/core/plan/plan.ts";
import { settings } from "../../src/core/sheets/settings.ts";
import { typedSheets } from "../../src/core/sheets/typedSheets.ts";
import { type TextTable, type Workbook, withTable } from "../../src/core/workbook.ts";
import { computedCsv } from "../../src/io/computedCsv.ts";
import { FORMAT, migrated } from "../../src/io/migrated.ts";
import { type ReadFiles, readFiles } from "../../src/io/readFiles.ts";
import { writeCsv } from "../../src/io/writeCsv.ts";
import { zipWorkbook } from "../../src/io/zipWorkbook.ts";
import { readZip } from "./readZip.ts";

/** The invented demo as the first edition of the format had it, text by text. */
const folder = join(import.meta.dirname, "firstEdition");
const texts = readdirSync(folder).map((name): [string, string] => [
	name,
	readFileSync(join(folder, name), "utf8"),
]);
/** As the first edition wrote it, without an edition; shortened to the names of the files. */
const description = JSON.stringify({
	profile: "tabular-data-package",
	name: "basinbook-workbook",
	title: "Planning workbook for newborn resuscitation kits",
	resources: texts.map(([path]) => ({ profile: "tabular-data-resource", path })),
});

const named = (name: string, text: string) => ({ name, bytes: new TextEncoder().encode(text) });
const files = texts.map(([name, text]) => named(name, text));
const first = readFiles([...files, named("datapackage.json", description)]);

const HELD = [
	["renew_kits", "when_expired"],
	["dose_for_wet_kits", "no"],
	["boil_for", "after_use"],
];

/** Every cell with text in it, by file, row and column. */
function cellsOf({ tables }: Workbook): string[] {
	return Object.entries(tables).flatMap(([file, { header, rows }]) =>
		rows.flatMap((cells, row) =>
			cells.flatMap((text, at) => (text === "" ? [] : [`${file} ${row} ${header[at]}: ${text}`])),
		),
	);
}

describe("a workbook of the first edition", () => {
	test("is told apart, with advice and no error", () => {
		expect(first.workbook.format).toBe(1);
		expect(first.problems.map(({ code, weight }) => [code, weight])).toEqual([
			["older-format", "advice"],
		]);
	});

	test("lacks what came since, and has it blank afterwards", () => {
		const addedColumns = typedSheets.flatMap(({ file, columns }) =>
			Object.keys(columns).flatMap((key) => (columns[key]?.added ? [[file, key] as const] : [])),
		);
		const inHeaders = ({ tables }: Workbook) =>
			addedColumns.filter(([file, key]) => tables[file]?.header.includes(key));
		expect(inHeaders(first.workbook)).toEqual([]);
		const now = migrated(first.workbook);
		expect(inHeaders(now)).toEqual(addedColumns.filter(([file]) => file in now.tables));
		expect(inHeaders(now)).toContainEqual(["records.csv", "times"]);
		const there = now.tables["unit.csv"]?.rows ?? [];
		expect(there).toContainEqual(["stock_horizon_days", ""]);
		const keys = there.map(([key]) => key);
		for (const [key, setting] of Object.entries(settings) as [string, { added?: boolean }][])
			if (setting.added) expect(keys).toContain(key);
		expect(new Set(keys).size).toBe(keys.length);
	});

	test("loses no cell, and plans as it did", () => {
		const now = migrated(first.workbook);
		expect(cellsOf(now)).toEqual(expect.arrayContaining(cellsOf(first.workbook)));
		// What is new since and would count with another value stands there as it was.
		const unit = first.workbook.tables["unit.csv"] as TextTable;
		const held = { ...unit, rows: [...unit.rows, ...HELD] };
		const before = plan(withTable(first.workbook, "unit.csv", held));
		const after = plan(now);
		expect(after.problems).toEqual(before.problems);
		expect(after.problems.filter(({ weight }) => weight === "error")).toEqual([]);
		const codes = after.problems.map(({ code }) => code);
		expect(codes).toContain("renewed-when-expired");
		expect(codes).toContain("not-dosed-for-wet-kits");
		expect(codes).toContain("boiled-after-use");
		const written = ({ tables }: Plan) => Object.values(tables).map(computedCsv);
		expect(written(after)).toEqual(written(before));
	});

	test("is of the present edition once it is saved", () => {
		const saved = readZip(zipWorkbook(migrated(first.workbook)));
		expect(saved.problems).toEqual([]);
		expect(saved.workbook.format).toBeUndefined();
		expect(migrated(saved.workbook).tables).toEqual(saved.workbook.tables);
	});
});

// record.md: a workbook of edition 1 or 2 keeps its meaning; workbook-format.md, Edition 3, has what came with it.
describe("a description that names no edition", () => {
	const unnamed = named("datapackage.json", description);
	const readWith = (name: string, text: string) =>
		readFiles([...files.filter((file) => file.name !== name), named(name, text), unnamed]);
	const textOf = (name: string) => readFileSync(join(folder, name), "utf8");
	const withColumn = (name: string, column: string) =>
		readWith(name, textOf(name).replace(/\r?\n/, `,${column}\n`));

	test.each([
		["uses.csv", readWith("uses.csv", "at,kit,what,by,note\n")],
		["rounds-done.csv", readWith("rounds-done.csv", "date,start,kits\n")],
		["placed.csv", readWith("placed.csv", "ordered_on,item,packs\n")],
		["purpose of a check", withColumn("checks.csv", " purpose ")],
		["a limit of rounds", withColumn("kinds.csv", "replace_after_rounds")],
		["boil_for", readWith("unit.csv", `${textOf("unit.csv").trimEnd()}\nboil_for,\n`)],
	])("is of edition 3 where there is %s", (_what, read) => {
		expect(read.workbook.format).toBeUndefined();
		expect(read.problems).toEqual([]);
		expect(migrated(read.workbook).tables).toEqual(read.workbook.tables);
	});

	test.each([
		["a column of edition 2", withColumn("records.csv", "times")],
		["a column that no edition knows", withColumn("kits.csv", "purpose")],
		[
			"a setting that no edition knows",
			readWith("unit.csv", `${textOf("unit.csv").trimEnd()}\nboil,1\n`),
		],
	])("is of the first where there is no more than %s", (_what, read) => {
		expect(read.workbook.format).toBe(1);
		expect(read.problems.map(({ code }) => code)).toContain("older-format");
	});

	test("plans as with its edition, where the demo's own is taken out", async () => {
		const demo = readdirSync("sample-csv")
			.filter((name) => /csv|json/.test(name))
			.map((name) => named(name, readFileSync(join("sample-csv", name), "utf8")));
		const without = demo.map((file) => (file.name === "datapackage.json" ? unnamed : file));
		expect(readFiles(without)).toEqual(readFiles(demo));
	});
});

describe("a setting whose usual value came later", () => {
	const unit = (...rows: string[][]) => ({
		"unit.csv": { header: ["key", "value"], rows: [["unit_name", "A"], ...rows] },
	});
	describe.each([
		["renew_kits", "when_expired", "in_time"],
		["dose_for_wet_kits", "no", "yes"],
		["boil_for", "after_use", "standing"],
	])("%s", (key, before, since) => {
		const held = (workbook: Workbook) =>
			migrated(workbook).tables["unit.csv"]?.rows.find(([name]) => name === key)?.[1];

		test.each([1, 2])("edition %d: as it was, unless it says so itself", (format) => {
			expect(held({ format, tables: unit() })).toBe(before);
			expect(held({ format, tables: unit([key, " "]) })).toBe(before);
			expect(held({ format, tables: unit([key, since]) })).toBe(since);
		});

		test("today's edition: as usual now where nothing is said", () => {
			expect(held({ tables: unit() })).toBeUndefined();
			expect(held({ tables: unit([key, ""]) })).toBe("");
		});
	});
});

describe("checks of the time before rounds were written down", () => {
	const checks = `checked_at,kit,pieces_counted,clean,bag_refills,valve_moves,seal_holds,relief_opens,suction_holds,note
2027-02-28 09:00,K1,12,yes,yes,yes,yes,yes,yes,
2027-02-28 09:00,K4,12,yes,yes,yes,yes,yes,yes,
`;
	const given = files.map((file) =>
		file.name === "checks.csv" ? named("checks.csv", checks) : file,
	);
	const registerOf = (edition: number) => {
		const text = JSON.stringify({ basinbook_format: edition, resources: [] });
		const read = readFiles([...given, named("datapackage.json", text)]);
		const table = plan(migrated(read.workbook)).tables["kit-register.csv"];
		return computedCsv(table as never)
			.split("\r\n")
			.map((line) => line.split(",").slice(0, 7).join(","));
	};

	test.each([1, 2])(
		"in edition %d stand for the end of a round, as before, but not for a kit used since",
		(edition) => {
			const [, k1, , , k4] = registerOf(edition);
			expect(k1).toBe("K1,Bag and mask kit,ready,yes,2,2027-02-28,2027-03-07");
			expect(k4).toBe("K4,Bag and mask kit,to_reprocess,yes,,,");
		},
	);

	test("in today's edition a check makes no kit's days longer", () => {
		const [, k1] = registerOf(FORMAT);
		expect(k1).toBe("K1,Bag and mask kit,ready,yes,1,2027-02-26,2027-03-05");
	});
});

describe("bringing texts up to date", () => {
	const header = ["date", "births", "kits_used"];
	const withRecords = (rows: string[][]): Workbook => ({
		format: 1,
		tables: { "records.csv": { header, rows, lines: rows.map((_, row) => row + 2) } },
	});

	test("leaves a sheet alone where a stray cell would come under a new column", () => {
		const stray = withRecords([["2027-01-01", "6", "1", "night shift wrote this"]]);
		expect(migrated(stray).tables["records.csv"]?.header).toEqual(header);
		const tidy = withRecords([["2027-01-01", "6", "1"]]);
		expect(migrated(tidy).tables["records.csv"]?.header).toEqual([...header, "times"]);
	});

	test("new settings stand after the lines that the file has", () => {
		const unit = { header: ["note", "value", "key"], rows: [["", "7", "plan_days"]], lines: [5] };
		const now = migrated({ format: 1, tables: { "unit.csv": unit } }).tables["unit.csv"];
		expect(now?.rows.slice(0, 2)).toEqual([
			["", "7", "plan_days"],
			["", "", expect.stringMatching(/^[a-z_]+$/)],
		]);
		expect(now?.lines).toEqual(now?.rows.map((_, row) => row + 5));
	});

	test("goes edition by edition", () => {
		const renamed = (from: string, to: string) => (workbook: Workbook) => ({
			tables: { [to]: workbook.tables[from] ?? { header: [], rows: [] } },
		});
		const steps = { 1: renamed("a", "b"), 2: renamed("b", "c") };
		const text = { header: ["x"], rows: [["1"]] };
		const at = (format: number, file: string) =>
			migrated({ format, tables: { [file]: text } }, steps, 3);
		expect(at(1, "a")).toEqual({ tables: { c: text } });
		expect(at(2, "b")).toEqual({ tables: { c: text } });
		expect(at(3, "c")).toEqual({ tables: { c: text } });
		expect(at(4, "d")).toEqual({ format: 4, tables: { d: text } });
	});
});

describe("a workbook of a newer edition", () => {
	const newer = JSON.stringify({ basinbook_format: FORMAT + 1, resources: [] });
	const births = "date,births,note,weather\r\n2027-03-01,6,,rain\r\n";
	const unit = "key,value\r\nunit_name,Willow Ford\r\nmoon_phase,full\r\n";
	const given = [
		named("u/births.csv", births),
		named("u/unit.csv", unit),
		named("u/tides.csv", "day,tide\r\n2027-03-01,high\r\n"),
		named("u/plan/tide-plan.csv", "day\r\n2027-03-01\r\n"),
		named("u/photo.png", "x"),
		named("u/datapackage.json", newer),
	];
	const read = readFiles(given);

	test("is opened with advice; what cannot be kept is said not to be read, but for results", () => {
		expect(read.problems.map(({ code, weight, received }) => [code, weight, received])).toEqual([
			["newer-format", "advice", String(FORMAT + 1)],
			["unknown-file", "advice", "photo.png"],
		]);
	});

	test("keeps sheets, columns, settings and its edition through edits and saving", () => {
		const now = migrated(read.workbook);
		const again = readZip(zipWorkbook(now)).workbook;
		expect(again.format).toBe(FORMAT + 1);
		expect(Object.keys(again.tables).sort()).toEqual(["births.csv", "tides.csv", "unit.csv"]);
		for (const [file, text] of [
			["births.csv", births],
			["unit.csv", unit],
		] as const)
			expect(writeCsv(again.tables[file] ?? { header: [], rows: [] })).toBe(text);
		expect(again.tables["tides.csv"]?.rows).toEqual([["2027-03-01", "high"]]);
	});
});

test("results beside a workbook leave its files described in the edition they are in", () => {
	const edition = (read: ReadFiles, beside: boolean) =>
		JSON.parse(planFiles(read, beside).files["datapackage.json"] ?? "").basinbook_format;
	expect(edition(first, true)).toBe(1);
	expect(edition(first, false)).toBe(FORMAT);
});

test.each([["two"], [0], [1.5], [-1]])("an edition of %s is no edition", (format) => {
	const text = JSON.stringify({ basinbook_format: format, resources: [] });
	const read = readFiles([...files, named("datapackage.json", text)]);
	expect(read.problems).toMatchObject([{ code: "strange-description", weight: "advice" }]);
	expect(read.problems[0]?.message).toContain("basinbook_format");
	expect(read.workbook.format).toBeUndefined();
});

test("files without any description stand in the present edition", () => {
	expect(readFiles(files)).toMatchObject({ problems: [] });
	expect(readFiles(files).workbook.format).toBeUndefined();
});

import { describe, expect, test } from "vitest";
import { tablesIn } from "../../../src/core/edit/tablesIn.ts";
import { plan } from "../../../src/core/plan/plan.ts";
import { headerOf } from "../../../src/core/sheet.ts";
import { orderSheet } from "../../../src/core/sheets/order.ts";
import { lineOf } from "../../../src/core/workbook.ts";
import { dataPackage } from "../../../src/io/dataPackage.ts";
import { migrated } from "../../../src/io/migrated.ts";
import { readFiles } from "../../../src/io/readFiles.ts";
import { readOrders } from "../../../src/io/readOrders.ts";
import { readUnits } from "../../../src/io/readUnits.ts";
import { zipWorkbook } from "../../../src/io/zipWorkbook.ts";
import { settingsGrid } from "../../../src/ui/grid/settingsGrid.ts";
import { typedGrid } from "../../../src/ui/grid/typedGrid.ts";
import { Store } from "../../../src/ui/state/store.ts";
import { valueIn } from "../../core/planCells.ts";
import { readZip } from "../../io/readZip.ts";
import { sampleFiles } from "../sample.ts";
import { textBytes } from "../textBytes.ts";
import { zipOf } from "../zipOf.ts";

/** The invented unit with one file of its own. */
const sampleWith = (name: string, text: string) =>
	readFiles([
		...sampleFiles.filter((file) => file.name !== name),
		{ name, bytes: textBytes(text) },
	]);

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

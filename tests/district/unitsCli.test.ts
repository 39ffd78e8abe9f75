import {
	existsSync,
	mkdirSync,
	mkdtempSync,
	readdirSync,
	readFileSync,
	rmSync,
	writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from "vitest";
import { unitsCommand } from "../../src/cli/unitsCommand.ts";
import { valueIn } from "../../src/core/outcome.ts";
import { plan } from "../../src/core/plan/plan.ts";
import { rowsOf } from "../../src/core/plan/rowsOf.ts";
import { headerOf } from "../../src/core/sheet.ts";
import { dayPlanSheet } from "../../src/core/sheets/dayPlan.ts";
import { districtSheets } from "../../src/core/sheets/districtSheets.ts";
import { orderSheet } from "../../src/core/sheets/order.ts";
import { checkDataPackage } from "../../src/io/checkDataPackage.ts";
import { readCsv } from "../../src/io/readCsv.ts";
import { readFiles } from "../../src/io/readFiles.ts";
import { expectWithin } from "../expectWithin.ts";
import { terminal } from "../io/terminal.ts";
import { inventedUnit, OTHER_NAME, unitName, writeUnit } from "./inventedUnit.ts";

let place: string;
let district: string;
let out: string;
const begin = () => {
	place = mkdtempSync(join(tmpdir(), "units-"));
	district = join(place, "district");
	out = join(place, "new", "out");
};
const end = () => rmSync(place, { recursive: true });

const run = (...given: string[]) =>
	terminal(unitsCommand, [district, "--out", out, "--workers", "1", ...given]);

/** A list that was written, row by row by column. */
function list(file: string): Record<string, string>[] {
	const { table } = readCsv(file, readFileSync(join(out, file), "utf8"));
	return table.rows.map((cells) =>
		Object.fromEntries(table.header.map((key, i) => [key, cells[i] ?? ""])),
	);
}

const planOf = (files: Record<string, string>) =>
	plan(
		readFiles(
			Object.entries(files).map(([name, text]) => ({
				name,
				bytes: new TextEncoder().encode(text),
			})),
		).workbook,
	);

const MANY = 12;
/** Workers load the program anew, which a busy machine takes a while for. */
const SLOW_MACHINE_MS = 120_000;
const invented = Array.from({ length: MANY }, (_, seed) => inventedUnit(seed));

describe("a district of folders and zips", () => {
	beforeAll(async () => {
		begin();
		for (const [seed, files] of invented.entries())
			writeUnit(join(district, seed % 2 === 0 ? `east/u${seed}` : `u${seed}.zip`), files);
		expect((await run("--workers", "2")).status).toBe(0);
	}, SLOW_MACHINE_MS);
	afterAll(end);

	test("every list has the columns of its sheet, and is described for other programs", () => {
		const files = districtSheets.map(({ file }) => file);
		expect(readdirSync(out).sort()).toEqual([...files, "datapackage.json"].sort());
		for (const sheet of districtSheets) {
			const { table, problems } = readCsv(sheet.file, readFileSync(join(out, sheet.file), "utf8"));
			expect([sheet.file, table.header, problems]).toEqual([sheet.file, headerOf(sheet), []]);
			expect(table.rows.length).toBeGreaterThan(0);
		}
		const described = readFileSync(join(out, "datapackage.json"), "utf8");
		expect(checkDataPackage("datapackage.json", described)).toEqual([]);
	});

	test("each unit's numbers are those of its own plan, in the order of the paths", () => {
		const units = list("units.csv");
		expect(units.map(({ path }) => path)).toEqual(
			[0, 10, 2, 4, 6, 8]
				.map((seed) => `east/u${seed}`)
				.concat([1, 11, 3, 5, 7, 9].map((seed) => `u${seed}.zip`)),
		);
		for (const [seed, files] of invented.entries()) {
			const row = units.find(({ unit }) => unit === unitName(seed));
			const own = planOf(files);
			const [day] = rowsOf(own, dayPlanSheet);
			expect(row?.kits_needed).toBe(String(valueIn(day?.kits_needed as never)));
			expect(row?.kits_in_service).toBe(String(valueIn(day?.kits_in_service as never)));
			expect(row?.first_run_out).toBe(
				rowsOf(own, orderSheet)
					.map((item) => valueIn(item.run_out_on) ?? "")
					.filter(Boolean)
					.sort()[0] ?? "",
			);
		}
	});

	test("the district's order is the sum of the units' own orders", () => {
		const plans = invented.map(planOf);
		for (const row of list("units-order.csv")) {
			const own = plans
				.flatMap((made) => rowsOf(made, orderSheet))
				.filter((each) => valueIn(each.item) === row.item);
			const of = (key: "usable" | "on_order" | "target_stock") =>
				own.map((each) => valueIn(each[key]) ?? 0);
			const [target, usable, onOrder] = [of("target_stock"), of("usable"), of("on_order")];
			const need = target.reduce(
				(sum, each, i) => sum + Math.max(0, each - (usable[i] ?? 0) - (onOrder[i] ?? 0)),
				0,
			);
			// Files keep six decimals.
			expectWithin(Number(row.need), need, 1e-6, row.item ?? "");
			expect(Number(row.units)).toBe(own.length);
		}
	});

	test("months are added up only of the units that recorded both", () => {
		const trend = list("units-trend.csv").filter(({ measure }) => measure === "births");
		const sum = (month: string, key: string) =>
			trend.filter((row) => row.month === month).reduce((all, row) => all + Number(row[key]), 0);
		const [january, february] = list("units-month.csv").filter(
			({ measure }) => measure === "births",
		);
		expect(january).toMatchObject({
			month: "2027-01",
			units_done: String(MANY),
			units_both: "0",
			change: "",
		});
		expect(Number(february?.done)).toBe(sum("2027-02", "done"));
		expect(Number(february?.change)).toBe(sum("2027-02", "done") - sum("2027-01", "done"));
		expect(february?.units_both).toBe(String(MANY));
	});

	test("as many workers as asked for change nothing", async () => {
		const files = districtSheets.map(({ file }) => readFileSync(join(out, file), "utf8"));
		await run();
		expect(districtSheets.map(({ file }) => readFileSync(join(out, file), "utf8"))).toEqual(files);
	});

	test("different first days are said", () => {
		expect(new Set(list("units.csv").map(({ first_day: day }) => day)).size).toBeGreaterThan(1);
		expect(
			list("units-problems.csv").filter(({ code }) => code === "first-days-differ"),
		).toHaveLength(1);
	});

	test("one item under two names is one by names.csv alone, less the district's own store", async () => {
		expect(list("units-order.csv").map(({ item }) => item)).toContain(OTHER_NAME);
		const before = list("units-order.csv").filter(({ item }) =>
			[OTHER_NAME, "Gauze swab"].includes(item ?? ""),
		);
		const need = before.reduce((sum, row) => sum + Number(row.need), 0);
		writeFileSync(join(district, "names.csv"), `item,name\n${OTHER_NAME},Gauze swab\n`);
		writeFileSync(join(district, "district-stock.csv"), "item,quantity\nGauze swab,10\n");
		await run();
		const rows = list("units-order.csv");
		expect(rows.map(({ item }) => item)).not.toContain(OTHER_NAME);
		const gauze = rows.find(({ item }) => item === "Gauze swab");
		expectWithin(Number(gauze?.need), need, 1e-5, "pieces");
		expectWithin(Number(gauze?.to_order), need - 10, 1e-5, "pieces");
		expect(
			list("units-needs.csv").some(
				(row) => row.item_as_written === OTHER_NAME && row.item === "Gauze swab",
			),
		).toBe(true);
	});
});

describe("what cannot be read", () => {
	beforeEach(begin);
	afterEach(end);

	test("is a row with its reason, and keeps no other from being planned; a second workbook of a unit is counted, and said", async () => {
		writeUnit(join(district, "good"), inventedUnit(1));
		writeFileSync(join(district, "torn.zip"), "PK and no more");
		mkdirSync(join(district, "empty"));
		writeUnit(join(district, "open"), {
			...inventedUnit(2),
			"uses.csv": 'at,kit,what\n"2027-01-04 10:00,K1,used\n',
		});
		writeUnit(join(district, "twice"), inventedUnit(1));
		const { status, stdout } = await run();
		expect({ status, stdout }).toEqual({
			status: 0,
			stdout: expect.stringContaining("2 of 5 units planned"),
		});
		expect(list("units.csv").map(({ path, unit, state }) => [path, unit, state])).toEqual([
			["empty", "empty", "not_read"],
			["good", unitName(1), "look"],
			["open", unitName(2), "not_read"],
			["torn.zip", "torn.zip", "not_read"],
			["twice", unitName(1), "look"],
		]);
		for (const { state, in_words: why } of list("units.csv"))
			if (state === "not_read") expect(why).not.toBe("");
		const counted = new Set(list("units-needs.csv").map(({ path }) => path));
		expect(counted).toEqual(new Set(["good", "twice"]));
		const named = list("units-problems.csv").filter(({ code }) => code === "unit-named-twice");
		expect(named.map(({ path }) => path)).toEqual(["twice"]);
	});

	test("a unit that is read but has no first day counts as not planned", async () => {
		writeUnit(join(district, "good"), inventedUnit(1));
		const unit = inventedUnit(2);
		const days = (unit["unit.csv"] as string).replace(/^plan_start,.*\r?\n/m, "");
		writeUnit(join(district, "undated"), { ...unit, "unit.csv": days });
		expect(await run()).toMatchObject({
			status: 0,
			stdout: expect.stringContaining("1 of 2 units planned, 1 read but not planned"),
		});
	});

	test("1 where no unit could be read, and the lists say why", async () => {
		mkdirSync(join(district, "empty"), { recursive: true });
		expect((await run()).status).toBe(1);
		expect(list("units.csv")).toHaveLength(1);
	});

	test("1 and nothing written where names.csv is not understood", async () => {
		writeUnit(join(district, "good"), inventedUnit(1));
		writeFileSync(join(district, "names.csv"), "item,name\nGauze swab,\n");
		const { status, stderr } = await run();
		expect({ status, stderr }).toEqual({
			status: 1,
			stderr: expect.stringContaining("names.csv line 2"),
		});
		expect(existsSync(out)).toBe(false);
	});

	test("1 where there is no such folder", async () => {
		const { status, stderr } = await run();
		expect({ status, stderr }).toEqual({
			status: 1,
			stderr: `Error: ${district} could not be read: it is not there. Nothing was written.\n`,
		});
	});
});

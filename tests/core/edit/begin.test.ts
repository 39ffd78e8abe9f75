import { expect, test } from "vitest";
import { beginEntries } from "../../../src/core/edit/begin/beginEntries.ts";
import { isGiven } from "../../../src/core/edit/begin/beginEntry.ts";
import { emptyWorkbook, isEmpty } from "../../../src/core/edit/emptyWorkbook.ts";
import { plan } from "../../../src/core/plan/plan.ts";
import type { Workbook } from "../../../src/core/workbook.ts";
import { smallUnit } from "../smallUnit.ts";
import { begun, entered, entryOf } from "./begun.ts";

function refused(workbook: Workbook, key: string, text: string): string {
	const written = entryOf(key).write(workbook, text);
	if (typeof written !== "string") throw new Error(`${text} was taken for ${key}`);
	return written;
}

test("no more than ten entries make a plan from an empty workbook, without an error", () => {
	expect(beginEntries.length).toBeLessThanOrEqual(10);
	const made = plan(begun());
	expect(made.made).toBe(true);
	expect(made.problems.filter(({ weight }) => weight === "error")).toEqual([]);
	expect(beginEntries.filter((entry) => !isGiven(entry, begun()))).toEqual([]);
});

test.each(["plan_start", "births_per_day", "rounds", "steps"])(
	"without %s there is no plan yet",
	(key) => {
		expect(plan(begun([key])).made).toBe(false);
	},
);

test("without a product there is no plan; its strength and quantity ask for its kind first", () => {
	const without = begun(["product-kind", "strength", "in-store"]);
	expect(plan(without).made).toBe(false);
	expect(refused(without, "strength", "3.5")).toContain("kind");
	expect(refused(without, "in-store", "1000")).toContain("kind");
});

test("every entry stands in its ordinary sheet", () => {
	const { tables } = begun();
	expect(tables["unit.csv"]?.rows).toContainEqual(["births_per_day", "4,5"]);
	expect(tables["kits.csv"]?.rows.map(([kit, , status]) => [kit, status])).toEqual([
		["K1", "in_service"],
		["K2", "in_service"],
		["K3", "in_service"],
	]);
	expect(tables["rounds.csv"]?.rows.map(([start]) => start)).toEqual(["07:00", "15:30"]);
	expect(tables["chlorine.csv"]?.rows.map((row) => row.slice(1, 4))).toEqual([
		["liquid", "3.5", "pct_w_v"],
	]);
	const item = tables["items.csv"]?.rows.at(-1);
	expect([item?.[0], item?.[2], item?.[3]]).toEqual(["Liquid bleach", "mL", "1000"]);
	const [lot] = tables["lots.csv"]?.rows ?? [];
	expect([lot?.[0], lot?.[2]]).toEqual(["Liquid bleach", "5000"]);
});

test("what stands in the sheets is read back as it was entered", () => {
	const read = Object.fromEntries(beginEntries.map((entry) => [entry.key, entry.read(begun())]));
	expect(read).toMatchObject({ rounds: "07:00 15:30", kits: "3", "in-store": "5 x 1000" });
});

test("a filled workbook shows its own values, and writing them again changes nothing", () => {
	const own = smallUnit();
	for (const entry of beginEntries) {
		if (["delivery_beds", "in-store"].includes(entry.key)) continue;
		expect(isGiven(entry, own), entry.key).toBe(true);
		expect(entry.write(own, entry.read(own)), entry.key).toEqual(own);
	}
	expect(entryOf("in-store").read(own)).toBe("20");
	expect(refused(own, "in-store", "30")).toContain("2 lots");
});

test.each([
	["plan_start", "Monday"],
	["births_per_day", "many"],
	["births_per_day", ""],
	["delivery_beds", "2.5"],
	["kits", "-1"],
	["kits", "1000"],
	["rounds", ""],
	["rounds", "07:00 banana"],
	["rounds", "07:00 7:00"],
	["strength", "0"],
	["in-store", "1,000"],
	["in-store", "5 x 0"],
	["in-store", "5 x many"],
])("%s: “%s” is refused in words that say what is allowed", (key, text) => {
	expect(refused(begun(), key, text)).toContain("allowed");
});

test("a blank stands where a default does", () => {
	const blank = entered(begun(), "delivery_beds", " ");
	expect(entryOf("delivery_beds").read(blank)).toBe("");
	expect(plan(blank).made).toBe(true);
});

test("fewer kits take away only rows of which nothing more is known", () => {
	const begunUnit = begun();
	expect(entered(begunUnit, "kits", "1").tables["kits.csv"]?.rows.map(([kit]) => kit)).toEqual([
		"K1",
	]);
	const own = smallUnit();
	expect(entryOf("kits").read(own)).toBe("3");
	// Two of the three have a date: only one row is bare.
	expect(entered(own, "kits", "2").tables["kits.csv"]?.rows.map(([kit]) => kit)).toEqual([
		"A",
		"B",
		"D",
	]);
	expect(refused(own, "kits", "1")).toContain("Kits of the unit");
	const more = entered(own, "kits", "4").tables["kits.csv"]?.rows ?? [];
	expect(more.at(-1)?.slice(0, 3)).toEqual(["K1", "bag set", "in_service"]);
});

test("a round that stays keeps its name", () => {
	const rows = entered(smallUnit(), "rounds", "7:00 12:00").tables["rounds.csv"]?.rows;
	expect(rows).toEqual([
		["07:00", "morning"],
		["12:00", ""],
	]);
});

test("steps that are there are never replaced", () => {
	const own = smallUnit();
	expect(entered(own, "steps")).toBe(own);
});

test("another kind of product takes its item and lot along; a name of the unit's own stays", () => {
	const tablets = entered(begun(), "product-kind", "tablet g_per_tablet");
	expect(tablets.tables["chlorine.csv"]?.rows[0]?.[0]).toBe("Chlorine tablets");
	const items = tablets.tables["items.csv"]?.rows.map((row) => [row[0], row[2]]) ?? [];
	expect(items.filter(([name]) => name?.startsWith("Chlorine"))).toEqual([
		["Chlorine tablets", "tablet"],
	]);
	expect(tablets.tables["lots.csv"]?.rows.map(([item]) => item)).toEqual(["Chlorine tablets"]);
	const own = entered(smallUnit(), "product-kind", "liquid pct_naocl_w_v");
	expect(own.tables["chlorine.csv"]?.rows[0]?.slice(0, 4)).toEqual([
		"liquid",
		"liquid",
		"3.5",
		"pct_naocl_w_v",
	]);
	expect(own.tables["items.csv"]).toEqual(smallUnit().tables["items.csv"]);
});

test("a workbook is empty until something is entered", () => {
	expect(isEmpty(emptyWorkbook())).toBe(true);
	for (const cells of [["x"], ["", "x"], ["", "", "x"]]) {
		const header = ["kit", "key", "kind"];
		expect(isEmpty({ tables: { "kits.csv": { header, rows: [["", " "], cells] } } })).toBe(false);
		const unit = { tables: { "unit.csv": { header: ["value", "key"], rows: [cells] } } };
		expect(isEmpty(unit)).toBe(cells[1] === "x");
	}
	for (const { key } of beginEntries.filter(
		(entry) => !["strength", "in-store"].includes(entry.key),
	))
		expect(isEmpty(entered(emptyWorkbook(), key)), key).toBe(false);
});

import { describe, expect, test } from "vitest";
import { plan } from "../../../../src/core/plan/plan.ts";
import { expectWithin } from "../../../expectWithin.ts";
import { columnOf, contentOf } from "../../contentOf.ts";
import { codesOf, numberIn, rowsOf, totalOf, valueIn } from "../../planCells.ts";
import { smallUnit, unitWith } from "../../smallUnit.ts";

const ward = (...lines: string[]) => ({
	"ward-solution.csv": ["use,litres_per_day,strength_pct,note", ...lines].join("\n"),
});
const heat = { heat_kw: 3, boil_hold_minutes: 0 };
const without = plan(unitWith(heat));
// 20 L of 0.1 % and 2 L of 0.5 % a day, from 3.5 %: 571.4 and 285.7 mL, up to the next 10.
const uses = ward("floors,20,0.1,", "spills,2,0.5,");
const made = plan(unitWith(heat, uses));
const liquid = (of: ReturnType<typeof plan>, column: string) =>
	numberIn(
		rowsOf(of, "supply-use.csv").find((row) => valueIn(row.item) === "liquid"),
		column,
	) as number;

test("each use is mixed once a day at its own strength, from the lot in use", () => {
	expect(
		contentOf(
			made,
			"ward-use.csv",
			"use",
			"litres_per_day",
			"product_quantity",
			"product_measure",
			"plan_quantity",
		),
	).toEqual([
		["floors", 20, 580, "mL", 7 * 580],
		["spills", 2, 290, "mL", 7 * 290],
	]);
	expectWithin(numberIn(rowsOf(made, "ward-use.csv")[0], "strength_made_pct"), 0.1015, 1e-12, "%");
	expectWithin(numberIn(rowsOf(made, "ward-use.csv")[0], "water_litres"), 19.42, 1e-12, "L");
});

test.each(["expected", "set_aside"])("the store's %s use of the product counts it", (column) => {
	expectWithin(liquid(made, column), liquid(without, column) + (7 * 870) / 1000, 1e-9, "L");
});

test.each([
	["expected", "kits"],
	["expected", "1"],
	["set_aside", "kits"],
])("in %s it counts beside the kits whatever it is called: %s", (column, name) => {
	const named = plan(unitWith(heat, ward(`${name},20,0.1,`, "spills,2,0.5,")));
	expect(liquid(named, column)).toBe(liquid(made, column));
});

test("the stock ahead goes down by it", () => {
	const lots = {
		"lots.csv": `item,lot,quantity,made_on,received_on,arrives_on,expires_on
			liquid,L1,1000,2027-02-28,,,2030-01-01`,
	};
	const ahead = (changes: Record<string, string>) =>
		contentOf(plan(unitWith(heat, changes)), "stock-ahead.csv", "item", "usable")
			.filter(([item]) => item === "liquid")
			.map(([, litres]) => Number(litres));
	const [alone, shared] = [ahead(lots), ahead({ ...lots, ...uses })];
	// 3 L at 1 % ÷ (5.5 L at 0.5 %) = 12 ÷ 11 preparations a day of 790 mL; a tenth of the liquid is wasted.
	alone.slice(0, 10).forEach((litres, week) => {
		const wards = ((week + 1) * 7 * ((12 / 11) * 0.79)) / 0.9;
		expectWithin(shared[week] as number, litres - wards, 1e-9, "L");
	});
});

test("the water to fetch counts it", () => {
	for (const column of ["litres_expected", "litres_set_aside"])
		columnOf(made, "water.csv", column).forEach((litres, day) => {
			expectWithin(
				Number(litres),
				Number(columnOf(without, "water.csv", column)[day]) + 22,
				1e-9,
				"L",
			);
		});
});

describe("the kits' own figures do not", () => {
	test.each([
		"day-plan.csv",
		"week-total.csv",
		"mixing.csv",
		"mixing-days.csv",
		"product-compare.csv",
	])("%s", (file) => {
		const columns = Object.keys(rowsOf(made, file)[0] ?? {});
		expect(columns.length).toBeGreaterThan(3);
		expect(contentOf(made, file, ...columns)).toEqual(contentOf(without, file, ...columns));
	});
});

test("as the lot fades, the days of the plan add up", () => {
	const chlorine = `product,form,strength,strength_measure,density_kg_per_l,fade_factor,loss_points_per_year,in_use
		liquid,liquid,12,pct_w_v,,1.3,,yes`;
	const fading = plan(
		unitWith(
			{ store_c: 40, measure_step_ml: 1, plan_days: 28, ...heat },
			{ ...ward("soak,5.5,0.5,"), "chlorine.csv": chlorine },
		),
	);
	// The same litres and strength as the kits' own preparation.
	const sum = columnOf(fading, "mixing-days.csv", "product_quantity").reduce(
		(all: number, q) => all + Number(q),
		0,
	);
	expect(numberIn(rowsOf(fading, "ward-use.csv")[0], "plan_quantity")).toBe(sum);
	expect(sum).toBeGreaterThan(
		28 * Number(columnOf(fading, "mixing-days.csv", "product_quantity")[0]),
	);
});

test("a strength that the product does not have is refused, and the store's use with it", () => {
	const strong = plan(unitWith(heat, ward("floors,20,4,")));
	expect(codesOf(rowsOf(strong, "ward-use.csv")[0]?.product_quantity)).toEqual(["too-weak"]);
	expect(liquid(strong, "expected")).toBeUndefined();
	expect(strong.made).toBe(false);
	expect(numberIn(totalOf(strong, "chlorine"), "set_aside")).toBe(7 * 790);
});

test("a use nobody can read leaves the store's use open: the rest alone would be too little", () => {
	const bad = plan(unitWith(heat, ward("floors,much,0.1,", "spills,2,0.5,")));
	expect(columnOf(bad, "ward-use.csv", "use")).toEqual(["spills", "floors"]);
	expect(codesOf(rowsOf(bad, "ward-use.csv")[1]?.plan_quantity)).toEqual(["bad-cell"]);
	expect(liquid(bad, "expected")).toBeUndefined();
	expect(bad.made).toBe(false);
});

test("without other uses the sheet is empty, and nothing is added", () => {
	expect(rowsOf(without, "ward-use.csv")).toEqual([]);
	expectWithin(liquid(plan(smallUnit(ward())), "set_aside"), (7 * 790) / 1000, 1e-12, "L");
});

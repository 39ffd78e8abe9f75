import { describe, expect, test } from "vitest";
import { problemsOf } from "../../../../src/core/outcome.ts";
import { plan } from "../../../../src/core/plan/plan.ts";
import { expectWithin } from "../../../expectWithin.ts";
import { contentOf } from "../../contentOf.ts";
import { numberIn, rowsOf, valueIn } from "../../planCells.ts";
import { smallUnit, unitWith } from "../../smallUnit.ts";

const FILE = "wall-table.csv";
const rows = rowsOf(plan(smallUnit()), FILE);
const of = (product: string) =>
	contentOf(
		plan(smallUnit()),
		FILE,
		"product",
		"lot",
		"litres",
		"product_quantity",
		"product_measure",
	)
		.filter(([name]) => name === product)
		.map((row) => row.slice(1));

describe("every lot of the first day with every size of basin", () => {
	test("3.5 % liquid: 142.86 mL a litre, up to the next 10 mL", () => {
		expect(of("liquid")).toEqual([
			["L1", 1, 150, "mL"],
			["L1", 2, 290, "mL"],
			["L1", 3, 430, "mL"],
			["L1", 5, 720, "mL"],
			["L1", 5.5, 790, "mL"],
			["L1", 10, 1430, "mL"],
			["L1", 15, 2150, "mL"],
			["L1", 20, 2860, "mL"],
		]);
	});

	test("70 % powder: 7.143 g a litre, up to the next gram", () => {
		expect(of("powder").map(([, , grams]) => grams)).toEqual([8, 15, 22, 36, 40, 72, 108, 143]);
	});

	test("tablets of 1.5 g: whole ones, by the label where none is in the store", () => {
		expect(of("tablets").map(([lot, , tablets]) => [lot, tablets])).toEqual(
			[4, 7, 10, 17, 19, 34, 50, 67].map((tablets) => ["", tablets]),
		);
	});
});

describe("each row", () => {
	test.each(rows.map((row) => [valueIn(row.product), valueIn(row.litres), row] as const))(
		"%s for %d L is never too weak, and just right in the litres said",
		(_product, litres, row) => {
			const made = numberIn(row, "strength_made_pct") as number;
			const exact = numberIn(row, "exact_litres") as number;
			expect(made).toBeGreaterThanOrEqual(0.5 - 1e-12);
			expect(exact).toBeGreaterThanOrEqual(Number(litres) - 1e-9);
			expectWithin((made * Number(litres)) / exact, 0.5, 1e-12, "%");
		},
	);
});

describe("a lot that fades", () => {
	const fading = (expires: string) => ({
		"chlorine.csv": `product,form,strength,strength_measure,density_kg_per_l,fade_factor,loss_points_per_year,in_use
			liquid,liquid,12,pct_w_v,,40,,yes`,
		"lots.csv": `item,lot,quantity,made_on,received_on,arrives_on,expires_on
			liquid,L1,10,2027-02-20,,,${expires}`,
	});
	const wallOf = (expires: string, storeC = 25) =>
		rowsOf(plan(unitWith({ measure_step_ml: 1, store_c: storeC }, fading(expires))), FILE)[5];
	const onDay = (day: string) => {
		const made = plan(unitWith({ measure_step_ml: 1, plan_start: day, plan_days: 1 }, fading("")));
		return numberIn(rowsOf(made, "mixing.csv")[0], "product_quantity");
	};

	test("is dosed for its weakest day of the month, the last one", () => {
		const row = wallOf("");
		expect([numberIn(row, "litres"), valueIn(row?.until)]).toEqual([10, "2027-03-31"]);
		const own = rowsOf(plan(unitWith({ measure_step_ml: 1 }, fading(""))), FILE)[4];
		expect(numberIn(own, "product_quantity")).toBe(onDay("2027-03-31"));
		expect(onDay("2027-03-31")).toBeGreaterThan(onDay("2027-03-01") as number);
	});

	test("or for the day on which it ends before: out of date, or too weak", () => {
		expect(valueIn(wallOf("2027-03-12")?.until)).toBe("2027-03-12");
		const tooWeak = wallOf("", 40);
		expect(String(valueIn(tooWeak?.until)) < "2027-03-31").toBe(true);
		expect(numberIn(tooWeak, "strength_made_pct")).toBeGreaterThanOrEqual(0.5);
	});
});

test("a lot too weak for the strength wanted is named by its line", () => {
	const weak = {
		"lots.csv": "item,lot,quantity,made_on,received_on,arrives_on,expires_on\nliquid,L1,10,,,,",
	};
	const [row] = rowsOf(plan(unitWith({ target_strength_pct: 5 }, weak)), FILE);
	expect(problemsOf(row?.product_quantity?.outcome as never)).toMatchObject([
		{ code: "too-weak", file: "lots.csv", line: 2, column: "lot" },
	]);
});

test("without a finer measure than asked for, the litres are exact", () => {
	const [row] = rowsOf(plan(unitWith({ target_strength_pct: 0.35 })), FILE);
	expect([numberIn(row, "product_quantity"), numberIn(row, "exact_litres")]).toEqual([100, 1]);
});

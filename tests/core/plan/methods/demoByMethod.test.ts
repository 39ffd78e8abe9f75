import { describe, expect, test } from "vitest";
import type { Plan } from "../../../../src/core/plan/plan.ts";
import type { Measure } from "../../../../src/core/sheets/planMeasures.ts";
import { expectWithin } from "../../../expectWithin.ts";
import { numberIn, rowsOf, totalOf, valueIn } from "../../planCells.ts";
import { demoBy } from "./demoByMethod.ts";

/*
 * Worked out by hand for 0.6 kits a day, as many at every hour, in rounds at 7, 14 and 21 h.
 *
 * Kits in a round: 0.6 × 10 ÷ 24 = 0.25 in the first, 0.6 × 7 ÷ 24 = 0.175 in the two others.
 * A round runs with chance 1 − e^−0.25 = 0.2211992 and 1 − e^−0.175 = 0.1605430 twice:
 * 0.5422852 a day, 3.7959962 in seven days. A second load of three kits begins with the
 * fourth kit, with chance 0.0001334 and 0.0000340 twice: 0.5424865 loads a day, 3.7974057 in
 * seven. Seven are enough for 95 of 100, of either. When a round runs, 2 kits are enough.
 */
const ROUNDS = 3.7959962;
const LOADS = 3.7974057;

const week = (plan: Plan, measure: Measure) => {
	const row = totalOf(plan, measure);
	return [numberIn(row, "expected"), numberIn(row, "set_aside")];
};
function expectWeek(plan: Plan, measure: Measure, expected: number, setAside: number) {
	const [mean, aside] = week(plan, measure);
	expectWithin(mean as number, expected, 1e-5 * Math.max(1, expected), measure);
	expectWithin(aside as number, setAside, 1e-9, measure);
}
/** Minutes of the plan's first round, which is for two kits. */
function minutesOfRound(plan: Plan) {
	const steps = rowsOf(plan, "run-sheet.csv").filter(
		(row) => valueIn(row.date) === "2027-03-01" && valueIn(row.round) === "Morning",
	);
	const minutes = (column: "starts" | "ends", at: number) => {
		const [h = 0, m = 0] = String(valueIn(steps.at(at)?.[column]))
			.split(":")
			.map(Number);
		return 60 * h + m;
	};
	return minutes("ends", -1) - minutes("starts", 0);
}
const methodsOf = (plan: Plan) => [
	...new Set(rowsOf(plan, "run-sheet.csv").map((row) => valueIn(row.method))),
];
const errorsOf = (plan: Plan) => plan.problems.filter(({ weight }) => weight === "error");

describe("the demo, whatever the method", () => {
	test.each(["chlorine", "boiling", "steam", "autoclave"])("%s makes a whole plan", (method) => {
		const plan = demoBy({ method });
		expect(errorsOf(plan)).toEqual([]);
		expect(plan.made).toBe(true);
		expectWeek(plan, "kits_used", 4.2, 8);
		expectWeek(plan, "rounds", ROUNDS, 7);
	});
});

describe("by chlorine", () => {
	const plan = demoBy({ method: "chlorine" });

	test("5.5 L of solution for each round, three buckets of 10 L for each load", () => {
		expectWeek(plan, "solution_litres", ROUNDS * 5.5, 7 * 5.5);
		expectWeek(plan, "boiled_litres", LOADS * 30, 7 * 30);
		expectWeek(plan, "boiled_buckets", LOADS * 3, 7 * 3);
	});

	test("boiled for each of 21 rounds, whether or not it runs: a load of 30 L for its two kits", () => {
		const prepared = demoBy({ method: "chlorine", boil_for: "every_round" });
		expectWeek(prepared, "boiled_litres", 21 * 30, 21 * 30);
	});

	test("10 + 2 × 30 + 20 + 9 + 2 × 9 + 7 minutes", () => {
		expect(minutesOfRound(plan)).toBe(124);
		expect(methodsOf(plan)).toEqual([null, "chlorine"]);
	});
});

describe("by boiling", () => {
	const plan = demoBy({ method: "boiling" });

	test("no solution, no product, no rinse; 5 L on the fire for each load", () => {
		expectWeek(plan, "solution_litres", 0, 0);
		expectWeek(plan, "chlorine", 0, 0);
		expectWeek(plan, "boiled_buckets", 0, 0);
		expectWeek(plan, "boiled_litres", LOADS * 5, 7 * 5);
		expect(valueIn(rowsOf(plan, "day-plan.csv")[0]?.chlorine_product)).toBe("");
		expect(rowsOf(plan, "mixing.csv")).toEqual([]);
	});

	test("10 + 2 × 30 + 45 + 20 + 2 × 9 + 7 minutes", () => {
		expect(minutesOfRound(plan)).toBe(160);
		expect(methodsOf(plan)).toEqual([null, "boiling"]);
	});

	test("where the unit wipes with chlorine, just that is mixed", () => {
		const wiped = demoBy({ method: "boiling", wipe_solution_litres: "0.5" });
		expectWeek(wiped, "solution_litres", ROUNDS * 0.5, 7 * 0.5);
		// 500 mL × 0.5 ÷ 3.5 at most as strong as its label: the lot has faded, so more, in steps of 10 mL.
		expect(numberIn(rowsOf(wiped, "mixing.csv")[0], "product_quantity")).toBe(80);
		expectWithin(numberIn(rowsOf(wiped, "mixing.csv")[0], "litres") as number, 0.5, 1e-12, "L");
	});

	test("no product need be chosen", () => {
		const plain = demoBy({ method: "boiling" }, [], {
			"chlorine.csv":
				"product,form,strength,strength_measure,density_kg_per_l,fade_factor,loss_points_per_year,in_use",
		});
		expect(errorsOf(plain)).toEqual([]);
		expect(plain.made).toBe(true);
	});
});

describe("by steam", () => {
	const plan = demoBy({ method: "steam" });

	test("1.5 L for each load, and 10 + 2 × 30 + 50 + 2 × 9 + 7 minutes", () => {
		expectWeek(plan, "boiled_litres", LOADS * 1.5, 7 * 1.5);
		expectWeek(plan, "solution_litres", 0, 0);
		expect(minutesOfRound(plan)).toBe(145);
	});
});

describe("by autoclave", () => {
	const plan = demoBy({ method: "autoclave" });

	test("nothing to mix and nothing to boil; 10 + 2 × 30 + 2 × 6 + 2 × 9 + 7 minutes", () => {
		expectWeek(plan, "solution_litres", 0, 0);
		expectWeek(plan, "boiled_litres", 0, 0);
		expect(minutesOfRound(plan)).toBe(107);
	});

	/*
	 * A kit is back 24 h after its round began. Just then the uses of 24 h are out of reach, 0.6;
	 * before the next return 0.6 + 0.175, 0.6 + 0.175 or 0.6 + 0.25. With c kits the needs of a
	 * day that find none are Σ E[(N − c)+] at the three ends − 3 × E[(N − c)+] of 0.6.
	 */
	test("the kits that are away are those of the last 24 hours", () => {
		const curve = rowsOf(plan, "kit-cover.csv");
		const unmet = [503.979309, 157.179632, 34.972569, 6.031362, 0.849421, 0.101203];
		unmet.forEach((per1000, i) => {
			expectWithin(numberIn(curve[i], "unmet_per_1000_uses") as number, per1000, 1e-5, "of 1,000");
		});
		expect(curve.map((row) => valueIn(row.enough)).slice(3, 5)).toEqual(["no", "yes"]);
	});

	test("twice as long away, 1.2 are out of reach at least", () => {
		const slow = demoBy({ method: "autoclave", autoclave_turnaround_hours: "48" });
		const [one] = rowsOf(slow, "kit-cover.csv");
		// (e^−1.2 × (2 × e^−0.175 + e^−0.25 − 3) + 0.6) ÷ 0.6: E[(N − 1)+] = m − 1 + e^−m.
		const ends = [0.175, 0.175, 0.25].map((more) => more + Math.exp(-1.2 - more) - Math.exp(-1.2));
		const perDay = ends.reduce((sum, each) => sum + each, 0);
		expectWithin(
			numberIn(one, "unmet_per_1000_uses") as number,
			(1000 * perDay) / 0.6,
			1e-6,
			"of 1,000",
		);
	});
});

/** Masks boiled, one kit at once; what sucks thrown away; all else in chlorine. */
const KIND = "Bag and mask kit";
const MIXED = [
	[KIND, "Mask, small", "boiling", "maker's sheet"],
	[KIND, "Mask, large", "boiling", ""],
	...["bulb", "tip", "cap"].map((piece) => [KIND, `Suction ${piece}`, "single_use", ""]),
];
const ITEMS = `item,group,measure,pack_size,pack_price,lead_days,wastage_pct,service_level
	Suction bulb,other,piece,10,3,7,0,0.95
	Suction tip,other,piece,10,3,7,0,0.95
	Suction cap,other,piece,10,3,7,0,0.95
	Gauze swab,gauze,piece,100,2.4,7,5,0.95
	Examination gloves,gloves,pair,50,4.2,7,5,0.95
	Cotton bud,other,piece,200,1.1,7,5,0.9
	Liquid bleach 3.5 %,other,mL,1000,1.1,5,5,0.98`;
const USAGE = `item,basis,quantity,note
	Cotton bud,piece,2,`;

describe("a kit that goes three ways", () => {
	const files = { "items.csv": ITEMS, "usage.csv": USAGE };
	const plan = demoBy({ boil_capacity_kits: "1" }, MIXED, files);

	test("each method has its own loads: 30 L a soak, 5 L a kit that is boiled", () => {
		expect(errorsOf(plan)).toEqual([]);
		expectWeek(plan, "solution_litres", ROUNDS * 5.5, 7 * 5.5);
		expectWeek(plan, "boiled_buckets", LOADS * 3, 7 * 3);
		// 4.2 kits are boiled, one at a time; 8 are enough.
		expectWeek(plan, "boiled_litres", LOADS * 30 + 4.2 * 5, 7 * 30 + 8 * 5);
	});

	test("a round of two kits: 10 + 2 × 30 + 29 + 2 × 65 + 2 × 9 + 7 minutes", () => {
		expect(minutesOfRound(plan)).toBe(254);
		expect(methodsOf(plan)).toEqual([null, "chlorine", "boiling"]);
		const boiled = rowsOf(plan, "run-sheet.csv").filter((row) => valueIn(row.method) === "boiling");
		expect(boiled.slice(0, 4).map((row) => valueIn(row.step))).toEqual([
			"bring to the boil with the pieces in it (load 1 of 2)",
			"keep at a rolling boil (load 1 of 2)",
			"bring to the boil with the pieces in it (load 2 of 2)",
			"keep at a rolling boil (load 2 of 2)",
		]);
	});

	test("a bulb for each kit used: 0.6 a day, 8 set aside for the week, 13 for the 14 days of an order", () => {
		const bulb = rowsOf(plan, "supply-use.csv").find((row) => valueIn(row.item) === "Suction bulb");
		expectWithin(numberIn(bulb, "expected") as number, 4.2, 1e-9, "pieces");
		expect(numberIn(bulb, "set_aside")).toBe(8);
		const order = rowsOf(plan, "order.csv").find((row) => valueIn(row.item) === "Suction bulb");
		expect(numberIn(order, "target_stock")).toBe(13);
		expect(numberIn(order, "order_packs")).toBe(2);
	});

	test("what is thrown away is not dried: two buds for each of nine pieces of twelve", () => {
		const bud = rowsOf(plan, "supply-use.csv").find((row) => valueIn(row.item) === "Cotton bud");
		expectWithin(numberIn(bud, "expected") as number, 4.2 * 2 * 9, 1e-6, "pieces");
	});
});

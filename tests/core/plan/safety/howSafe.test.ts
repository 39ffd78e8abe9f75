import { describe, expect, test } from "vitest";
import { plan } from "../../../../src/core/plan/plan.ts";
import { expectWithin } from "../../../expectWithin.ts";
import { contentOf } from "../../contentOf.ts";
import { numberIn, rowsOf, totalOf, valueIn } from "../../planCells.ts";
import { unitWith } from "../../smallUnit.ts";

const FILE = "how-safe.csv";
const ofPromise = (made: ReturnType<typeof plan>, promise: string, day: string | null = null) =>
	rowsOf(made, FILE).find((row) => valueIn(row.promise) === promise && valueIn(row.day) === day);

const week = plan(unitWith({ plan_days: 7 }));

/** P(N ≤ n) of a Poisson count, by its own sum. */
function poissonAtMost(n: number, mean: number): number {
	let term = Math.exp(-mean);
	let sum = term;
	for (let k = 1; k <= n; k++) {
		term *= mean / k;
		sum += term;
	}
	return sum;
}

describe("the chance that a number is enough, from its own distribution", () => {
	test("births of a day and of a week: Poisson", () => {
		for (const [day, mean] of [
			["2027-03-01", 6],
			[null, 42],
		] as const) {
			const row = ofPromise(week, "births", day);
			const aside = numberIn(row, "set_aside") as number;
			expectWithin(
				numberIn(row, "enough_of_100"),
				100 * poissonAtMost(aside, mean),
				1e-6,
				"of 100",
			);
			expect(numberIn(row, "one_less")).toBe(aside - 1);
			const less = 100 * poissonAtMost(aside - 1, mean);
			expectWithin(numberIn(row, "one_less_of_100"), less, 1e-6, "of 100");
			expect(less).toBeLessThan(95);
		}
	});

	test("litres, buckets and product go by the rounds, loads and preparations they are for", () => {
		const boiledForKits = plan(unitWith({ boil_for: "after_use", heat_kw: 3 }));
		for (const [made, litres, count] of [
			[week, "solution_litres", "rounds"],
			[week, "chlorine", "rounds"],
			[boiledForKits, "boiled_litres", "boiled_buckets"],
		] as const) {
			const row = ofPromise(made, litres);
			const other = ofPromise(made, count);
			expectWithin(
				numberIn(row, "enough_of_100"),
				numberIn(other, "enough_of_100") as number,
				1e-9,
				"of 100",
			);
		}
	});

	test("what is set aside is what the whole period says, and at least as sure as asked", () => {
		for (const row of rowsOf(week, FILE)) {
			const enough = numberIn(row, "enough_of_100") as number;
			expect(enough).toBeGreaterThanOrEqual((numberIn(row, "asked_of_100") as number) - 1e-9);
			expect(enough).toBeLessThanOrEqual(100);
		}
		const gauze = ofPromise(week, "gauze_pieces");
		expect(numberIn(gauze, "set_aside")).toBe(numberIn(totalOf(week, "gauze_pieces"), "set_aside"));
	});
});

describe("far safer than asked", () => {
	test("a bath of vinegar each day: enough always, what it costs, and that it is kept once", () => {
		const row = ofPromise(week, "vinegar_litres", "2027-03-01");
		expect(numberIn(row, "set_aside")).toBe(1);
		expect(numberIn(row, "expected")).toBeLessThan(0.15);
		expect(numberIn(row, "enough_of_100")).toBeGreaterThan(99.9);
		// 1 money a litre.
		expectWithin(numberIn(row, "cost"), 1 - (numberIn(row, "expected") as number), 1e-9, "L");
		expect(valueIn(row?.far_safer)).toBe("yes");
		expect(valueIn(row?.lever)).toMatch(/Kept once for all days of the plan, \d L are enough/);
	});

	test("kits needed: of beds, what the risk alone would ask for; of the risk, what one fewer would leave", () => {
		const byBeds = plan(unitWith({ delivery_beds: 9 }));
		expect(contentOf(byBeds, FILE, "promise", "set_aside", "far_safer")[0]).toEqual([
			"kits_needed",
			10,
			"yes",
		]);
		expect(valueIn(ofPromise(byBeds, "kits_needed")?.lever)).toMatch(
			/^Beds and spare kits ask for 10; for the risk alone \d are enough/,
		);
		// One fewer than the rule asks for is not offered, nor fewer spare kits than none.
		expect(numberIn(ofPromise(byBeds, "kits_needed"), "one_less")).toBeUndefined();
		const noSpares = plan(unitWith({ delivery_beds: 9, spare_kits: 0 }));
		expect(valueIn(ofPromise(noSpares, "kits_needed")?.lever)).toBe(
			"There is one kit for each delivery bed, 9; keep them all.",
		);
		const byRisk = ofPromise(plan(unitWith({ unmet_per_1000_uses: 50 })), "kits_needed");
		expectWithin(numberIn(byRisk, "asked_of_100"), 95, 1e-9, "of 100");
	});

	test("more kits in one soak are proposed only where the unit has them", () => {
		for (const [inSoak, offered] of [
			[2, true],
			[3, false],
		] as const) {
			const made = plan(
				unitWith({
					births_per_day: 1,
					plan_days: 7,
					boil_for: "after_use",
					heat_kw: 3,
					soak_capacity_kits: inSoak,
					soak_container_litres: 30,
				}),
			);
			const levers = rowsOf(made, FILE).map((row) => String(valueIn(row.lever)));
			expect(levers.some((words) => words.includes("Fewer litres in a bucket"))).toBe(true);
			expect(levers.some((words) => words.includes("more kits in one soak"))).toBe(offered);
		}
	});

	test("an order: stock with its packs against the target, and with one pack less", () => {
		const made = plan(unitWith({ plan_days: 7 }));
		const orders = contentOf(made, FILE, "promise", "of", "set_aside", "one_less", "beyond").filter(
			([promise]) => promise === "order",
		);
		const order = rowsOf(made, "order.csv").find((row) => valueIn(row.item) === "gauze squares");
		const [row] = orders.filter(([, of]) => of === "gauze squares");
		const then =
			(numberIn(order, "usable") as number) +
			(numberIn(order, "on_order") as number) +
			(numberIn(order, "order_quantity") as number);
		expect(row).toEqual([
			"order",
			"gauze squares",
			then,
			then - 100,
			expect.closeTo(then - (numberIn(order, "target_stock") as number), 9),
		]);
		expect(orders.length).toBe(
			rowsOf(made, "order.csv").filter((each) => (numberIn(each, "order_packs") ?? 0) > 0).length,
		);
	});

	test("water boiled for every round, whether or not it runs: all rounds together beside what they take", () => {
		const boiling = (policy: string) =>
			plan(unitWith({ plan_days: 2, heat_kw: 3, boil_for: policy }));
		const made = boiling("every_round");
		const row = ofPromise(made, "boiled_for_rounds", "2027-03-02");
		// Boiled once a kit waits, what is boiled is what the rounds take.
		const ofDay = ofPromise(boiling("after_use"), "boiled_litres", "2027-03-02");
		const rounds = contentOf(made, "boiling.csv", "date", "litres")
			.filter(([date]) => date === "2027-03-02")
			.map(([, litres]) => Number(litres));
		expect(rounds.length).toBeGreaterThanOrEqual(3);
		expectWithin(
			numberIn(row, "set_aside"),
			rounds.reduce((a, b) => a + b, 0),
			1e-9,
			"L",
		);
		expectWithin(numberIn(row, "expected"), numberIn(ofDay, "expected") as number, 1e-9, "L");
		expect(numberIn(row, "enough_of_100")).toBeGreaterThan(99);
		expect(valueIn(row?.lever)).toMatch(/^Water is boiled for every round, whether or not it runs/);
		expect(ofPromise(boiling("after_use"), "boiled_for_rounds", "2027-03-02")).toBeUndefined();
	});

	test("says nothing of what would change a number that is about as safe as asked", () => {
		for (const row of rowsOf(week, FILE))
			if (valueIn(row.far_safer) === "no") expect(valueIn(row.lever)).toBe("");
	});
});

test("a plan that waits for something has no row of it", () => {
	const waits = plan(unitWith({ births_per_day: "many" }));
	expect(ofPromise(waits, "births")).toBeUndefined();
});

test("of a plan's only day vinegar is not kept for other days", () => {
	const row = ofPromise(plan(unitWith({ plan_days: 1 })), "vinegar_litres", "2027-03-01");
	expect(valueIn(row?.lever)).toMatch(/^A descaling takes a whole bath/);
});

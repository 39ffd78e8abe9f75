import { describe, expect, test } from "vitest";
import { plan } from "../../../../src/core/plan/plan.ts";
import { expectWithin } from "../../../expectWithin.ts";
import { columnOf, contentOf } from "../../contentOf.ts";
import { codesOf, numberIn, rowsOf } from "../../planCells.ts";
import { unitWith } from "../../smallUnit.ts";

const FILE = "water.csv";
const settings = {
	boil_for: "after_use",
	heat_kw: 3,
	plan_days: 1,
	boil_hold_minutes: 0,
	descale_every_rounds: 0,
	soapy_water_litres: 4,
	plain_rinse_litres: 3,
	soak_capacity_kits: 2,
	births_per_day: 20,
};
const twoRounds = { "rounds.csv": "start,label\n07:00,\n19:00," };

/** Water of a day with the kits of two rounds given: every number of the one with every number of the other. @param onceADay on a day with a round */
function everyDay(perRound: number, perLoad: number, onceADay: number, means: readonly number[]) {
	const chance = (k: number, mean: number) => {
		let p = Math.exp(-mean);
		for (let i = 1; i <= k; i++) p *= mean / i;
		return p;
	};
	const use = (kits: number) => (kits === 0 ? 0 : perRound + perLoad * Math.ceil(kits / 2));
	const days: (readonly [number, number])[] = [];
	for (let a = 0; a < 40; a++)
		for (let b = 0; b < 40; b++)
			days.push([
				(a + b > 0 ? onceADay : 0) + use(a) + use(b),
				chance(a, means[0] as number) * chance(b, means[1] as number),
			]);
	return days.sort(([x], [y]) => x - y);
}
const meanOf = (days: ReturnType<typeof everyDay>) =>
	days.reduce((sum, [litres, p]) => sum + litres * p, 0);
function quantileOf(days: ReturnType<typeof everyDay>, level: number): number {
	let below = 0;
	for (const [litres, p] of days) {
		below += p;
		if (below >= level - 1e-12) return litres;
	}
	return Number.NaN;
}

describe("water of a day with two rounds, against every possible day", () => {
	test.each([
		["solution with each round", {}, [4 + 3 + 5.5, 30, 0]],
		["solution once a day", { solution_made: "each_day" }, [4 + 3, 30, 5.5]],
		["one bucket a load", { rinse_buckets: 1, bucket_fill_litres: 2 }, [12.5, 2, 0]],
		["four of five days are enough", { plan_confidence: 0.8 }, [12.5, 30, 0]],
		["ninety-nine of a hundred", { plan_confidence: 0.99 }, [12.5, 30, 0]],
	] as const)("%s", (_what, change, [perRound, perLoad, onceADay]) => {
		const made = plan(unitWith({ ...settings, ...change }, twoRounds));
		const kits = numberIn(rowsOf(made, "day-plan.csv")[0], "kits_to_reprocess_expected") as number;
		const days = everyDay(perRound, perLoad, onceADay, [kits / 2, kits / 2]);
		const level = Number({ plan_confidence: 0.95, ...change }.plan_confidence);
		const [row] = rowsOf(made, FILE);
		expectWithin(numberIn(row, "litres_expected"), meanOf(days), 1e-9, "L");
		expectWithin(numberIn(row, "litres_set_aside"), quantileOf(days, level), 1e-9, "L");
	});

	test("what boils away is fetched too, a little to the safe side", () => {
		const made = plan(unitWith({ ...settings, boil_hold_minutes: 20 }, twoRounds));
		const kits = numberIn(rowsOf(made, "day-plan.csv")[0], "kits_to_reprocess_expected") as number;
		const days = everyDay(12.5, 30 + (2 * 0.6 * 1200) / 2257, 0, [kits / 2, kits / 2]);
		const [row] = rowsOf(made, FILE);
		expectWithin(numberIn(row, "litres_expected"), meanOf(days), 1e-9, "L");
		const exact = quantileOf(days, 0.95);
		expect(numberIn(row, "litres_set_aside")).toBeGreaterThanOrEqual(exact - 1e-9);
		expectWithin(numberIn(row, "litres_set_aside"), exact, 1e-3 * exact, "L");
	});
});

// calculations.md 5: preparations are days with a round, at most solution_life_hours each.
describe("solution made once a day is counted as often as it is made", () => {
	const row = (change: Record<string, string | number>, file: string) =>
		rowsOf(plan(unitWith({ ...settings, ...change }, twoRounds)), file)[0];
	const water = (change: Record<string, string | number>, of: string) =>
		numberIn(row(change, FILE), `litres_${of}`) as number;

	test.each(["after_use", "every_round"])(
		"as in the plan of the day, water boiled %s",
		(boil_for) => {
			const rare = { births_per_day: 1, ready_life_days: 90, solution_made: "each_day", boil_for };
			for (const of of ["expected", "set_aside"]) {
				const [little, much] = [0.5, 4.5].map((wipe_solution_litres) => {
					const change = { ...rare, wipe_solution_litres };
					const solution = numberIn(row(change, "day-plan.csv"), `solution_litres_${of}`);
					return { solution: solution as number, water: water(change, of) };
				}) as [Record<"solution" | "water", number>, Record<"solution" | "water", number>];
				expectWithin(much.water - little.water, much.solution - little.solution, 1e-9, "L");
			}
		},
	);

	test("anew for each round where it grows too old between them, like solution made for each", () => {
		const often = { kits_used_per_100_births: 100, solution_life_hours: 6 };
		for (const water_from of ["tap", "boiled"])
			for (const of of ["expected", "set_aside"]) {
				const made = (solution_made: string) =>
					water({ ...often, solution_water: water_from, solution_made }, of);
				expectWithin(made("each_day"), made("each_round"), 1e-9, "L");
			}
	});
});

test("a descaling takes its bath less the vinegar, and its rinse", () => {
	const water = (every: number) =>
		numberIn(
			rowsOf(plan(unitWith({ ...settings, descale_every_rounds: every }, twoRounds)), FILE)[0],
			"litres_expected",
		) as number;
	const made = plan(unitWith(settings, twoRounds));
	const rounds = numberIn(rowsOf(made, "day-plan.csv")[0], "rounds_expected") as number;
	expectWithin(water(5) - water(0), ((2 - 1 + 5) * rounds) / 5, 1e-9, "L");
});

describe("water that is boiled whether or not a round runs", () => {
	const [after, every] = ["after_use", "every_round"].map(
		(boil_for) => rowsOf(plan(unitWith({ ...settings, boil_for }, twoRounds)), FILE)[0],
	);
	const day = (boil_for: string) =>
		rowsOf(plan(unitWith({ ...settings, boil_for }, twoRounds)), "day-plan.csv")[0];

	test("is fetched for each round: as prepared for, two loads and two", () => {
		expect(numberIn(day("every_round"), "boiled_litres_expected")).toBe(120);
		expect(numberIn(day("every_round"), "boiled_litres_set_aside")).toBe(120);
		const more = 120 - (numberIn(day("after_use"), "boiled_litres_expected") as number);
		expectWithin(
			(numberIn(every, "litres_expected") as number) -
				(numberIn(after, "litres_expected") as number),
			more,
			1e-9,
			"L",
		);
	});

	test("and so is its fuel", () => {
		const fuel = (row: typeof every, key: string) => numberIn(row, key) as number;
		// 30 L by 78 °C through a share of 0.2 of 30 MJ/kg.
		const ofLoad = (30 * 4.186 * (99.9968 - 22)) / 0.2 / 30_000;
		expectWithin(fuel(every, "fuel_expected"), 4 * ofLoad, 1e-4, "kg");
		expectWithin(fuel(every, "fuel_set_aside"), 4 * ofLoad, 1e-4, "kg");
		const expected = (numberIn(day("after_use"), "boiled_litres_expected") as number) / 30;
		expectWithin(fuel(after, "fuel_expected"), expected * ofLoad, 1e-4, "kg");
	});
});

describe("containers and sources", () => {
	const sources = (...lines: string[]) => ({
		...twoRounds,
		"water-sources.csv": ["source,litres_per_day,note", ...lines].join("\n"),
	});
	const taken = (litres: string, ...lines: string[]) =>
		columnOf(
			plan(unitWith({ ...settings, water_container_litres: litres }, sources(...lines))),
			FILE,
			"taken_from",
		)[0];
	const litres = numberIn(
		rowsOf(plan(unitWith(settings, twoRounds)), FILE)[0],
		"litres_set_aside",
	) as number;

	test("containers are whole, and hold what is set aside", () => {
		expect(litres).toBe(2 * 12.5 + 3 * 30);
		for (const [each, count] of [
			[20, 6],
			[115, 1],
			[57.5, 2],
			[57, 3],
		] as const)
			expect(
				contentOf(
					plan(unitWith({ ...settings, water_container_litres: each }, twoRounds)),
					FILE,
					"containers",
				),
			).toEqual([[count]]);
	});

	test.each([
		["no list: nothing to say", [], ""],
		["one without end", ["mains,,"], "mains (115 L)"],
		["in their order", ["tank,40,", "well,,"], "tank (40 L), well (75 L)"],
		["the other order", ["well,,", "tank,40,"], "well (115 L)"],
		[
			"not enough: what is not covered is said",
			["tank,40,", "well,30.5,"],
			"tank (40 L), well (31 L), not covered (45 L)",
		],
		["a dry one is passed over", ["tank,0,", "well,,"], "well (115 L)"],
	])("%s", (_what, lines, from) => {
		expect(taken("20", ...lines)).toBe(from);
	});

	test("a source nobody can read leaves the sources open, not the litres", () => {
		const made = plan(unitWith(settings, sources("tank,much,")));
		const [row] = rowsOf(made, FILE);
		expect(codesOf(row?.taken_from)).toEqual(["bad-cell"]);
		expect(numberIn(row, "litres_set_aside")).toBe(litres);
	});
});

test.each([
	["charcoal_traditional", "kg"],
	["electric", "kWh"],
	["coal of the moon", "kg"],
])("fuel is measured by what burns: %s in %s", (fuel, measure) => {
	expect(columnOf(plan(unitWith({ ...settings, fuel })), FILE, "fuel_measure")).toEqual([measure]);
});

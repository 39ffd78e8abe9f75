import { describe, expect, test } from "vitest";
import { type Counts, chanceAtMost, mean } from "../../../src/core/counts/counts.ts";
import { levelNodes } from "../../../src/core/counts/levelNodes.ts";
import { mixedOver } from "../../../src/core/counts/mixedOver.ts";
import { spanShape } from "../../../src/core/counts/spanShape.ts";
import { oneRound, type RoundsOfDay } from "../../../src/core/rounds/roundsOfDay.ts";
import { loadsForEveryRound, loadsStanding } from "../../../src/core/water/loadsBoiled.ts";
import { expectWithin } from "../../expectWithin.ts";
import { answerOf, refusalOf } from "../answerOf.ts";

const day = (...kits: number[]): RoundsOfDay => ({
	kind: "in_rounds",
	starts: [420, 840, 1260].slice(0, kits.length),
	kits,
	byKind: [kits],
});
const prepared = { confidence: 0.95, kitsInService: 10, kitsInLoad: 3 };
const standing = { ...prepared, waterMinutes: 300, keepsMinutes: 1440, coolMinutes: 240 };

describe("for every round", () => {
	test("as prepared for, whether or not it runs: there is no chance in it", () => {
		const { byDay, total } = answerOf(loadsForEveryRound, {
			...prepared,
			days: [day(0.1, 0.1, 3), day(0, 5, 0.1)],
		});
		expect(byDay.map(({ first, chance }) => [first, ...chance])).toEqual([
			[4, 1],
			[5, 1],
		]);
		expect([total.first, ...total.chance]).toEqual([9, 1]);
	});
});

describe("standing ready", () => {
	const boiled = (change: object) =>
		answerOf(loadsStanding, { ...standing, days: [day(0.2, 0.2, 0.2)], ...change });

	test("rounds that never run: made again when too old, for one round of a day of three", () => {
		// Cool at 7:00, in date for 20 hours: it serves 14:00 and 21:00; a new one for the next 7:00.
		const { byDay, total } = boiled({ days: Array.from({ length: 5 }, () => day(0, 0, 0)) });
		for (const counts of byDay) expectWithin(mean(counts), 1, 1e-12, "loads");
		expectWithin(mean(total), 5, 1e-12, "loads");
	});

	test("rounds that always run: one for each", () => {
		expectWithin(
			mean(boiled({ days: [day(40, 40, 40)], kitsInLoad: 100 }).total),
			3,
			1e-12,
			"loads",
		);
	});

	test("water that keeps no longer than to its own round is boiled for each", () => {
		expectWithin(mean(boiled({ keepsMinutes: 241 }).total), 3, 1e-12, "loads");
	});

	test("a fire that takes longer than to the round before must be lit before that is known", () => {
		const quick = mean(boiled({}).total);
		const slow = mean(boiled({ waterMinutes: 700 }).total);
		expect(slow).toBeGreaterThan(quick + 0.3);
		expect(slow).toBeLessThanOrEqual(3);
	});

	test("a round that begins as the fire would be lit may still use the water", () => {
		// Seven hours from one round to the next: as if it were lit just before, not just after.
		const [after, at, before] = [419.5, 420, 420.5].map((waterMinutes) =>
			mean(boiled({ waterMinutes }).total),
		) as [number, number, number];
		expectWithin(at, before, 1e-12, "loads");
		expect(at).toBeGreaterThan(after + 0.01);
	});

	test("between once a day and once a round", () => {
		const [rare, often] = [boiled({ days: [day(0.01, 0.01, 0.01)] }), boiled({})];
		expect(mean(rare.total)).toBeGreaterThan(1);
		expect(mean(often.total)).toBeGreaterThan(mean(rare.total));
		expect(mean(often.total)).toBeLessThan(3);
	});

	test("forecast births, whose level is not known: total and days mixed over it", () => {
		const level = { mean: 0.6, levelShape: 2, daySpread: 0 };
		const known = new Array(3).fill(day(0.2, 0.2, 0.2)) as RoundsOfDay[];
		const days = known.map((each) => ({ ...each, forecast: { level, sure: [[0, 0, 0]] } }));
		const nodes = levelNodes(spanShape(days.map(() => level)), 1.8);
		expect(nodes.length).toBeGreaterThan(1);
		const at = (factor: number) =>
			boiled({ days: known.map(() => day(...[0.2, 0.2, 0.2].map((kits) => kits * factor))) });
		const { byDay, total } = boiled({ days });
		const expected = mixedOver(nodes, (factor) => at(factor).total);
		const second = mixedOver(nodes, (factor) => at(factor).byDay[1] as Counts);
		for (let loads = 0; loads < 9; loads++) {
			expectWithin(chanceAtMost(total, loads), chanceAtMost(expected, loads), 1e-12, "chance");
			expectWithin(
				chanceAtMost(byDay[1] as Counts, loads),
				chanceAtMost(second, loads),
				1e-12,
				"chance",
			);
		}
	});

	test("days with a figure of their own are no more and no fewer where others' level is not known", () => {
		const level = { mean: 0.6, levelShape: 2, daySpread: 0 };
		const known = day(0.2, 0.2, 0.2);
		const days = [{ ...known, forecast: { level, sure: [[0, 0, 0]] } }, known];
		const nodes = levelNodes(2, 0.6);
		const at = (factor: number) =>
			boiled({ days: [day(...[0.2, 0.2, 0.2].map((kits) => kits * factor)), known] });
		const expected = mixedOver(nodes, (factor) => at(factor).total);
		for (let loads = 0; loads < 7; loads++)
			expectWithin(
				chanceAtMost(boiled({ days }).total, loads),
				chanceAtMost(expected, loads),
				1e-12,
				"chance",
			);
	});

	test("what is boiled for each round is asked anew where its loads or hours are others", () => {
		const always = { days: [day(40, 40, 40)] };
		expectWithin(mean(boiled({ ...always, kitsInLoad: 100 }).total), 3, 1e-12, "loads");
		expectWithin(mean(boiled({ ...always, kitsInLoad: 5 }).total), 6, 1e-12, "loads");
		// Ten minutes apart, each is lit before it is known that the one before did not run.
		const near = { ...day(0, 0, 0), starts: [420, 430, 440] };
		const [apart, close] = [day(0, 0, 0), near].map((of) =>
			boiled({ days: [of], keepsMinutes: 800 }),
		);
		expectWithin(mean(apart?.total as Counts), 2, 1e-12, "loads");
		expectWithin(mean(close?.total as Counts), 3, 1e-12, "loads");
	});

	test("a round that hardly ever runs is as good as one that never does", () => {
		const [hardly, never] = [day(1e-17, 0.2, 0.2), day(0, 0.2, 0.2)].map((of) =>
			mean(boiled({ days: [of, of] }).total),
		);
		expectWithin(hardly as number, never as number, 1e-12, "loads");
	});

	test("days add up", () => {
		const { byDay, total } = boiled({
			days: [day(0.1, 0.5, 0.2), day(0.3, 0, 1), day(0.2, 0.2, 0.2)],
		});
		expectWithin(
			mean(total),
			byDay.reduce((sum, counts) => sum + mean(counts), 0),
			1e-9,
			"loads",
		);
	});
});

describe("standing ready for the next kit", () => {
	const kits = (perDay: number): RoundsOfDay => ({
		kind: "after_each_use",
		kits: [perDay],
		byKind: [[perDay]],
	});
	const boiled = (perDay: number) =>
		mean(answerOf(loadsStanding, { ...standing, days: [kits(perDay)] }).total);

	test("without kits what stands ready is made again as it grows too old", () => {
		expectWithin(boiled(0), 1440 / 1200, 1e-12, "loads");
	});

	test("a load for each kit, and those too old", () => {
		// Of a Poisson count of mean 2 × 5 h ÷ 24 h at most one comes in 93 of 100, two in 99: three stand ready.
		const x = 2 * (1200 / 1440);
		const series = 1 + x / 4 + x ** 2 / 20 + x ** 3 / 120 + x ** 4 / 840 + x ** 5 / 6720;
		expectWithin(boiled(2), 2 + 3 / (1200 / 1440) / series, 1e-2, "loads");
	});

	test("as many stand ready on every day as the busiest asks for", () => {
		// Three at two kits a day: on a day without kits all three grow too old.
		const days = [kits(0), kits(2)];
		const [quiet] = answerOf(loadsStanding, { ...standing, days }).byDay;
		expectWithin(mean(quiet as Counts), (3 * 1440) / 1200, 1e-12, "loads");
	});

	test("where it is too old before it is cool, none can stand ready", () => {
		const [problem] = refusalOf(loadsStanding, { ...standing, days: [kits(1)], keepsMinutes: 240 });
		expect(problem).toMatchObject({
			code: "cooling-too-long",
			received: "240 min",
			allowed: "less than 240 min",
			file: "unit.csv",
			column: "boiled_water_hours",
		});
	});
});

test("one round a day, as likely as not without a kit: by hand", () => {
	const { total } = answerOf(loadsStanding, {
		...loadsStanding.example.inputs,
		days: [oneRound(Math.LN2)],
	});
	expectWithin(mean(total), 2 / 3, 1e-3, "loads");
});

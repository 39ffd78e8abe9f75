import { describe, expect, test } from "vitest";
import { kitsOfDaySolution } from "../../../src/core/chlorine/kitsOfDaySolution.ts";
import type { RoundsOfDay } from "../../../src/core/rounds/roundsOfDay.ts";
import { poissonDraw } from "../../reference/draws.ts";
import { randomNumbers } from "../../reference/randomNumbers.ts";
import { answerOf } from "../answerOf.ts";
import { inRounds, oneByOne } from "./aDay.ts";

const through = (days: readonly RoundsOfDay[], lifeHours = 24, kitsInService = 50) =>
	answerOf(kitsOfDaySolution, { days, lifeHours, confidence: 0.95, kitsInService });

const STARTS = [420, 840, 1260];

// calculations.md 1 (set aside; examples: Poisson mean 3 → 6, 20 → 28) and 5 (each_day: once a day, at most solution_life_hours).
describe("rounds that one solution serves", () => {
	test.each([
		["all of the day", [1, 1, 1], 24, 6],
		["all of the day, whatever round brings them", [0, 3, 0], 24, 6],
		["each its own, where it grows too old before the next", [1, 1, 1], 7, 3],
		["two of three", [10, 10, 10], 8, 28],
		["the two with most", [0, 10, 10], 8, 28],
		["a day with none is made for one", [0, 0, 0], 24, 1],
	])("%s", (_, kits, lifeHours, wanted) => {
		expect(through([inRounds(STARTS, kits)], lifeHours)).toBe(wanted);
	});

	test("the fullest of the days, and on each round at most the kits there are", () => {
		const days = [
			[1, 1, 1],
			[7, 7, 6],
			[2, 0, 0],
		].map((kits) => inRounds(STARTS, kits));
		expect(through(days)).toBe(28);
		expect(through(days, 24, 4)).toBe(12);
		expect(through(days, 7, 4)).toBe(4);
	});
});

describe("kit by kit", () => {
	test("all kits of the day, of a day with any", () => {
		expect(through([oneByOne(3)])).toBe(6);
		expect(through([oneByOne(20)])).toBe(28);
	});

	test("all kits of the day, however little is known of its births", () => {
		// A mean of 2 at a Gamma level of shape 0.5 is negative binomial with that size, worked out by its
		// recursion: of the days with any kit 95 % have 11 at most, 1 + what 95 % of all days have is 9.
		const level = { mean: 2, levelShape: 0.5, daySpread: 0 };
		expect(through([{ ...oneByOne(2), forecast: { level, sure: [[0]] } }])).toBe(11);
	});

	test("where it is used for less than a day: the first, and those that come meanwhile", () => {
		// A quarter of 12 kits is a mean of 3.
		expect(through([oneByOne(12)], 6)).toBe(1 + 6);
		expect(through([oneByOne(0.1)], 23)).toBe(1);
	});
});

/** Share of the solutions made on many days through which at most so many kits go: made when a round needs it and none is young enough. */
function shareEnough(
	starts: readonly number[],
	kits: readonly number[],
	lifeHours: number,
	most: number,
) {
	const random = randomNumbers(20270301);
	let made = 0;
	let enough = 0;
	for (let day = 0; day < 40_000; day++) {
		let open: { at: number; kits: number } | undefined;
		const close = () => {
			if (!open) return;
			made++;
			if (open.kits <= most) enough++;
			open = undefined;
		};
		starts.forEach((at, i) => {
			const come = poissonDraw(kits[i] as number, random);
			if (come === 0) return;
			if (open && at - open.at >= lifeHours * 60) close();
			open = { at: open?.at ?? at, kits: (open?.kits ?? 0) + come };
		});
		close();
	}
	return enough / made;
}

test.each([
	[24, [2.5, 1.8, 1.7]],
	[8, [2.5, 1.8, 1.7]],
	[24, [0.2, 0.1, 0.1]],
	[8, [0.2, 0.1, 0.3]],
	[6, [0.4, 1, 0.3]],
])("played with a life of %i hours it is as often enough as the plan asks", (lifeHours, kits) => {
	const most = through([inRounds(STARTS, kits)], lifeHours);
	// Four standard errors of 40,000 days at 0.95.
	expect(shareEnough(STARTS, kits, lifeHours, most)).toBeGreaterThan(0.95 - 0.0045);
	if (lifeHours === 24) expect(shareEnough(STARTS, kits, lifeHours, most - 1)).toBeLessThan(0.95);
});

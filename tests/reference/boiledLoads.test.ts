import { describe, expect, test } from "vitest";
import { mean, setAside } from "../../src/core/counts/counts.ts";
import { sumAtLevel } from "../../src/core/counts/sumAtLevel.ts";
import type { RoundsOfDay } from "../../src/core/rounds/roundsOfDay.ts";
import { loadsOfDay } from "../../src/core/rounds/roundsThatRun.ts";
import { loadsForEveryRound, loadsStanding } from "../../src/core/water/loadsBoiled.ts";
import { answerOf } from "../core/answerOf.ts";
import { expectWithin } from "../expectWithin.ts";
import { randomNumbers } from "./randomNumbers.ts";

const DAYS = 365;
const YEARS = 60;
const STANDARD_ERRORS = 4;
const DAY = 1440;
const LITRES = 30;

interface Unit {
	readonly boil_for: string;
	readonly starts: readonly number[];
	/** Mean kits in each round. */
	readonly kits: readonly number[];
	readonly kitsInLoad: number;
	/** Loads each round is prepared for. */
	readonly prepared: readonly number[];
	readonly water: number;
	readonly lasts: number;
}

function poissonDraw(random: () => number, mean: number): number {
	const limit = Math.exp(-mean);
	let [count, product] = [0, random()];
	while (product > limit) {
		product *= random();
		count++;
	}
	return count;
}

/** One year, round by round, as somebody at the stove would go through it: litres boiled. */
function played(unit: Unit, random: () => number): number {
	const { starts, kits, kitsInLoad, prepared, water, lasts, boil_for } = unit;
	const WARM_UP = 20;
	const times: number[] = [];
	for (let day = 0; day < WARM_UP + DAYS; day++)
		for (const start of starts) times.push(day * DAY + start);
	/** Rounds whose water stands ready or is on the way. */
	let ready: number[] = [];
	let used = 0;
	let loads = 0;
	const goThrough = (round: number) => {
		const waiting = poissonDraw(random, kits[round % starts.length] as number);
		if (boil_for === "after_use" && round >= WARM_UP * starts.length)
			loads += Math.ceil(waiting / kitsInLoad);
		if (waiting > 0) {
			const oldest = ready.find(
				(made) => (times[round] as number) - (times[made] as number) <= lasts,
			);
			ready = ready.filter((made) => made !== oldest);
		}
	};
	times.forEach((at, round) => {
		const lit = at - water;
		for (; used < round && (times[used] as number) < lit; used++) goThrough(used);
		const until = round - used;
		ready = ready.filter((made) => lit - (times[made] as number) <= lasts);
		const good = ready.filter((made) => at - (times[made] as number) <= lasts).length;
		const isLit = boil_for === "every_round" || (boil_for === "standing" && good <= until);
		if (!isLit) return;
		ready.push(round);
		if (round >= WARM_UP * starts.length) loads += prepared[round % starts.length] as number;
	});
	for (; used < times.length; used++) goThrough(used);
	return LITRES * loads;
}

/** Heating, hold and cooling, and for how long cool water keeps: quick, and longer than to the next round. */
const QUICK = { waterMinutes: 270, coolMinutes: 100 };
const SLOW = { waterMinutes: 700, coolMinutes: 430 };

describe("a year of boiled water, by when it is boiled", () => {
	test.each([
		["every_round", QUICK],
		["standing", QUICK],
		["standing", SLOW],
		["after_use", QUICK],
	])("%s, $waterMinutes minutes to cool water", (boil_for, { waterMinutes, coolMinutes }) => {
		const kits = [0.4, 0.25, 0.3];
		const starts = [420, 840, 1260];
		const day: RoundsOfDay = { kind: "in_rounds", starts, kits, byKind: [kits] };
		const days = Array.from({ length: DAYS }, () => day);
		const prepared = { days, confidence: 0.95, kitsInService: 6, kitsInLoad: 1 };
		const water = { waterMinutes, coolMinutes, keepsMinutes: DAY };
		const eachLoad = answerOf(loadsOfDay, { rounds: day, kitsInLoad: 1 });
		const total =
			boil_for === "after_use"
				? sumAtLevel(days.map(() => eachLoad))
				: boil_for === "standing"
					? answerOf(loadsStanding, { ...prepared, ...water }).total
					: answerOf(loadsForEveryRound, prepared).total;
		const unit: Unit = {
			boil_for,
			starts,
			kits,
			kitsInLoad: 1,
			// Of rounds that run with a mean of 0.4 and of 0.25 kits, two and two are enough for 95 of 100; of 0.3, two.
			prepared: [2, 2, 2],
			water: waterMinutes,
			lasts: DAY - coolMinutes,
		};
		const random = randomNumbers(17);
		const years = Array.from({ length: YEARS }, () => played(unit, random));
		const average = years.reduce((sum, litres) => sum + litres, 0) / YEARS;
		const variance = years.reduce((sum, litres) => sum + (litres - average) ** 2, 0) / (YEARS - 1);
		const near = STANDARD_ERRORS * Math.sqrt(variance / YEARS) + 1e-6;
		expectWithin(LITRES * mean(total), average, near, "L");
		// What is set aside is enough for about as many years as the plan asks.
		const enough = LITRES * setAside(total, 0.95);
		const share = years.filter((litres) => litres <= enough).length / YEARS;
		expect(share).toBeGreaterThan(0.95 - STANDARD_ERRORS * Math.sqrt((0.95 * 0.05) / YEARS));
		expect(enough).toBeLessThan(average + 4 * Math.sqrt(variance) + LITRES);
	});
});

import { describe, expect, test } from "vitest";
import { type LevelOfDay, setAside } from "../../src/core/counts/counts.ts";
import { poisson } from "../../src/core/counts/poisson.ts";
import { spanShape } from "../../src/core/counts/spanShape.ts";
import { countOverLevel } from "../../src/core/rounds/atLevel.ts";
import type { RoundsOfDay } from "../../src/core/rounds/roundsOfDay.ts";
import { runningRounds } from "../../src/core/rounds/roundsThatRun.ts";
import { expectWithin } from "../expectWithin.ts";

/**
 * A day that varies of its own (size r) has one multiplier, and a round over midnight takes
 * the kits of two days. The program gives them all the multiplier of the day of the round.
 * What that does is measured here, beside the sum over both multipliers.
 */
const SIZE = 5;
const MINUTES = 1440;
const NODES = 40;

/** Midpoints of equal chances of a Gamma of mean 1 and size 5: sums of five exponentials, by bisection. */
const multipliers = Array.from({ length: NODES }, (_, i) => quantile((i + 0.5) / NODES));

function quantile(chance: number): number {
	let [low, high] = [0, 10];
	for (let step = 0; step < 60; step++) {
		const middle = (low + high) / 2;
		// Erlang of 5 stages: 1 − Σ e^−x x^k ÷ k!
		const x = SIZE * middle;
		let term = Math.exp(-x);
		let beyond = 0;
		for (let k = 0; k < SIZE; k++) {
			beyond += term;
			term *= x / (k + 1);
		}
		if (1 - beyond < chance) low = middle;
		else high = middle;
	}
	return (low + high) / 2;
}

/** Means of the rounds: of the evening before, and of the day itself. */
function partsOf(starts: readonly number[], perDay: number) {
	const evening = ((MINUTES - (starts.at(-1) as number)) * perDay) / MINUTES;
	const own = starts.map((start, i) => ((start - (starts[i - 1] ?? 0)) * perDay) / MINUTES);
	return { evening, own };
}

function asPlanned(starts: readonly number[], perDay: number): RoundsOfDay {
	const { evening, own } = partsOf(starts, perDay);
	const kits = own.map((mean, i) => (i === 0 ? mean + evening : mean));
	const level = dayOf(perDay);
	const sure = [kits.map(() => 0)];
	return { kind: "in_rounds", starts, kits, byKind: [kits], forecast: { level, sure } };
}

/** A day of a level that is known, with a variation of its own. */
function dayOf(mean: number): LevelOfDay {
	return { mean, levelShape: 1e9, daySpread: 1 / SIZE };
}

type Count = (known: RoundsOfDay) => { first: number; chance: Float64Array };

/** The same count with each part's own multiplier. */
function exactly(starts: readonly number[], perDay: number, count: Count): Float64Array {
	const { evening, own } = partsOf(starts, perDay);
	const chance = new Float64Array(400);
	for (const before of multipliers)
		for (const today of multipliers) {
			const kits = own.map((mean, i) => mean * today + (i === 0 ? evening * before : 0));
			const found = count({ kind: "in_rounds", starts, kits, byKind: [kits] });
			found.chance.forEach((p, i) => {
				chance[found.first + i] = (chance[found.first + i] as number) + p / NODES ** 2;
			});
		}
	return chance;
}

const kitsOfDay: Count = ({ kits }) => poisson(kits.reduce((sum, mean) => sum + mean, 0));
const roundsOfDay: Count = ({ kits }) => runningRounds(kits);

const threeRounds = [7, 14, 21].map((hour) => 60 * hour);
const oneAtEight = [8 * 60];

describe("a day's kits and rounds, sure to 95 of 100: never less than with both multipliers", () => {
	test.each([
		["three rounds", threeRounds, 0.6, [2, 2], [2, 2]],
		["three rounds", threeRounds, 6, [13, 12], [3, 3]],
		["three rounds", threeRounds, 25, [48, 45], [3, 3]],
		["one round, at eight", oneAtEight, 0.6, [2, 2], [1, 1]],
		["one round, at eight", oneAtEight, 6, [13, 12], [1, 1]],
		["one round, at eight", oneAtEight, 25, [48, 42], [1, 1]],
	])("%s, %j, %d kits a day", (_what, starts, perDay, kits, rounds) => {
		const asides = (count: Count) => [
			setAside(countOverLevel(asPlanned(starts, perDay), count), 0.95),
			setAside({ first: 0, chance: exactly(starts, perDay, count) }, 0.95),
		];
		expect(asides(kitsOfDay)).toEqual(kits);
		expect(asides(roundsOfDay)).toEqual(rounds);
	});
});

/** Each day's multiplier is on its own part and on the evening that the next day's first round takes. */
describe("over many days it evens out: spread of what is planned beside that of both multipliers", () => {
	test.each([
		["three rounds", threeRounds, 1, 1.28],
		["three rounds", threeRounds, 7, 1.032],
		["three rounds", threeRounds, 28, 1.008],
		["one round, at eight", oneAtEight, 1, 1.8],
		["one round, at eight", oneAtEight, 7, 1.068],
		["one round, at eight", oneAtEight, 28, 1.016],
	])("%s, %j, %d days: variance %d times", (_what, starts, days, ratio) => {
		const { evening, own } = partsOf(starts, 1);
		const rest = own.reduce((sum, mean) => sum + mean, 0);
		const planned = 1 / spanShape(Array.from({ length: days }, () => dayOf(1)));
		const exact =
			(evening ** 2 + (days - 1) * (evening + rest) ** 2 + rest ** 2) / SIZE / days ** 2;
		expectWithin(planned / exact, ratio, 1e-3, "times");
	});
});

import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Hearth, WaterNeed } from "../../src/core/water/batch.ts";
import { scheduleOf } from "../../src/core/water/boilingSchedule.ts";
import { fewestPots } from "../../src/core/water/fewestPots.ts";
import { expectWithin } from "../expectWithin.ts";
import { always } from "./workbooks.ts";

const NEAR = 1e-6;
/** One pot of 10 L by itself takes so many minutes to boil. */
const powerFor = (minutes: number) => (10 * 4.186 * 80) / (minutes * 60);
const whole = (min: number, max: number) => fc.integer({ min, max });

const hearths: fc.Arbitrary<Hearth> = fc.record({
	stoves: whole(1, 3),
	pots: whole(1, 6),
	potsOnStove: whole(1, 4),
	potLitres: fc.constant(10),
	netKw: whole(10, 200).map(powerFor),
	drawnC: fc.constant(20),
	boilingC: fc.constant(100),
	holdMinutes: whole(0, 20),
	coolMinutes: whole(0, 700),
	keepsMinutes: whole(300, 1800),
});
const needsOf = (most: number, litres: readonly number[]) =>
	fc.array(
		fc
			.record({ litres: fc.constantFrom(...litres), from: whole(0, 4000), lasts: whole(0, 120) })
			.map(({ lasts, ...of }): WaterNeed => ({ ...of, until: of.from + lasts })),
		{ maxLength: most },
	);

/** Loads of pieces among them, each with its hour. */
const withPieces = fc
	.tuple(
		needsOf(25, [4, 10, 15, 30, 60]),
		fc.array(
			fc.record({ litres: fc.constantFrom(1.5, 5, 10), from: whole(0, 4000), lasts: whole(1, 60) }),
			{ maxLength: 8 },
		),
	)
	.map(([rinse, pieces]): WaterNeed[] => [
		...rinse,
		...pieces.map(({ lasts, ...of }) => ({ ...of, until: of.from + lasts, isForPieces: true })),
	]);

describe("fires of any rounds, on any stoves, in any pots", () => {
	test("no pot and no stove is ever in two places, and all water is cool and fresh", () => {
		fc.assert(
			fc.property(withPieces, hearths, (needs, hearth) => {
				const { fires, without } = scheduleOf(needs, hearth);
				const pots = fires.flatMap(({ taken }) => taken);
				const spansOf = (list: readonly (readonly { from: number; to: number }[])[]) =>
					list.map((spans) => [...spans].sort((x, y) => x.from - y.from));
				const inTwoPlaces = spansOf([
					...Array.from({ length: hearth.stoves }, (_, i) =>
						fires
							.filter(({ stove }) => stove === i + 1)
							.map(({ lightAt, offBoilAt }) => ({ from: lightAt, to: offBoilAt })),
					),
					...Array.from({ length: hearth.pots }, (_, i) => pots.filter(({ pot }) => pot === i + 1)),
				]).flatMap((spans) =>
					spans.filter(({ from }, i) => from < (spans[i - 1]?.to ?? from) - NEAR),
				);
				expect(inTwoPlaces).toEqual([]);
				expect(pots.filter(({ pot }) => pot < 1 || pot > hearth.pots)).toEqual([]);
				expect(fires.filter(({ stove }) => stove < 1 || stove > hearth.stoves)).toEqual([]);
				for (const [i, { litres, from, until, isForPieces }] of needs.entries()) {
					const its = fires.filter(({ need }) => need === i);
					const boiled = its.reduce((sum, fire) => sum + fire.litres, 0);
					expectWithin(boiled, without.includes(i) ? 0 : litres, 1e-9, "L");
					if (isForPieces) {
						// It boils at its hour, in one pot that nothing keeps afterwards.
						for (const { lightAt, heatMinutes, offBoilAt, taken } of its) {
							expectWithin(lightAt + heatMinutes, from, NEAR, "min");
							expectWithin(offBoilAt, until, NEAR, "min");
							expect(taken.map(({ from: filled, to }) => [filled, to])).toEqual([
								[lightAt, offBoilAt],
							]);
						}
						continue;
					}
					const wrong = its.flatMap(({ lightAt, coolAt, taken }) => [
						coolAt > from + NEAR && "not cool",
						Math.min(...taken.map((pot) => pot.from)) !== lightAt && "lit at another time",
						taken.some(({ to }) => to - hearth.coolMinutes < until - hearth.keepsMinutes - NEAR) &&
							"too old",
					]);
					expect(wrong.filter(Boolean)).toEqual([]);
				}
			}),
			always(150),
		);
	});

	test("as many pots as are said to be the fewest do, and one fewer does not", () => {
		fc.assert(
			fc.property(needsOf(6, [10, 20]), hearths, (needs, hearth) => {
				const fewest = fewestPots(needs, { ...hearth, potsOnStove: 1 });
				const missing = (pots: number) =>
					scheduleOf(needs, { ...hearth, potsOnStove: 1, pots }).without.length;
				if (fewest === undefined) expect(missing(40)).toBeGreaterThan(0);
				else {
					expect(missing(fewest)).toBe(0);
					if (fewest > 1) expect(missing(fewest - 1)).toBeGreaterThan(0);
				}
			}),
			always(60),
		);
	});
});

/**
 * Whether there is any schedule at all: every start of every pot on a grid is tried. With
 * whole times and lengths, one that exists exists on the grid too.
 */
function canBe(needs: readonly WaterNeed[], heat: number, hearth: Hearth): boolean {
	const { pots, stoves, coolMinutes, keepsMinutes } = hearth;
	const jobs = needs.flatMap(({ litres, from, until }) =>
		Array.from({ length: litres / 10 }, () => ({
			last: from - coolMinutes - heat,
			first: until - keepsMinutes - heat,
		})),
	);
	const busy = (starts: readonly number[], at: number, minutes: number) =>
		starts.filter((start) => start <= at && start + minutes > at).length;
	const fits = (starts: readonly number[]) =>
		starts.every(
			(at) => busy(starts, at, heat) <= stoves && busy(starts, at, heat + coolMinutes) <= pots,
		);
	const tryAll = (starts: readonly number[]): boolean => {
		const job = jobs[starts.length];
		if (!job) return true;
		for (let start = job.last; start >= job.first; start--)
			if (fits([...starts, start]) && tryAll([...starts, start])) return true;
		return false;
	};
	return tryAll([]);
}

test("whatever can be done with a few pots of water is found", () => {
	const small = fc.record({
		needs: fc.array(
			fc
				.record({ from: whole(10, 22), litres: fc.constantFrom(10, 10, 20) })
				.map(({ from, litres }): WaterNeed => ({ litres, from, until: from })),
			{ minLength: 2, maxLength: 3 },
		),
		heat: whole(1, 4),
		cool: whole(0, 6),
		spare: whole(0, 6),
		pots: whole(1, 3),
		stoves: whole(1, 2),
	});
	let [can, cannot] = [0, 0];
	fc.assert(
		fc.property(small, ({ needs, heat, cool, spare, pots, stoves }) => {
			const hearth: Hearth = {
				stoves,
				pots,
				potsOnStove: 1,
				potLitres: 10,
				netKw: powerFor(heat),
				drawnC: 20,
				boilingC: 100,
				holdMinutes: 0,
				coolMinutes: cool,
				keepsMinutes: cool + spare,
			};
			const possible = canBe(needs, heat, hearth);
			expect(scheduleOf(needs, hearth).without.length === 0).toBe(possible);
			if (possible) can++;
			else cannot++;
		}),
		always(400),
	);
	expect(Math.min(can, cannot)).toBeGreaterThan(50);
});

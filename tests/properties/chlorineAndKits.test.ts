import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Strength } from "../../src/core/chlorine/availableChlorine.ts";
import { measureOut } from "../../src/core/chlorine/measureOut.ts";
import { expiriesPerDay } from "../../src/core/kits/expiriesPerDay.ts";
import type { Reprocessing } from "../../src/core/kits/reprocessing.ts";
import type { InRounds } from "../../src/core/kits/roundsGoneThrough.ts";
import { unmetPer1000 } from "../../src/core/kits/unmetPer1000.ts";
import { gapsBetween } from "../../src/core/plan/rounds/turnaroundMinutes.ts";
import { upTo } from "../../src/core/upTo.ts";
import { answerOf, outcomeOf } from "../core/answerOf.ts";
import { equalRounds, oneByOne } from "../core/kits/reprocessed.ts";
import { erlangB } from "../reference/erlangB.ts";
import { always } from "./workbooks.ts";

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const ROUNDING = 1e-9;

const strength: fc.Arbitrary<Strength> = fc.oneof(
	number(0.1, 1000).map((gramsPerLitre) => ({ form: "liquid" as const, gramsPerLitre })),
	number(0.001, 1).map((gramsPerGram) => ({ form: "powder" as const, gramsPerGram })),
	number(0.001, 100).map((gramsPerTablet) => ({ form: "tablet" as const, gramsPerTablet })),
);
const mix = fc.record({
	strength,
	litres: number(0.1, 250),
	targetPct: number(0.01, 5),
	stepMl: number(0.1, 1000),
	stepGrams: number(0.01, 1000),
});

describe("product measured", () => {
	test("never makes a mix weaker than wanted, nor takes more than the volume", () => {
		let made = 0;
		fc.assert(
			fc.property(mix, (inputs) => {
				const outcome = outcomeOf(measureOut, inputs);
				if (!outcome.ok) {
					expect(outcome.problems.map((p) => p.code)).toEqual(["too-weak"]);
					return;
				}
				made++;
				const { strengthMadePct, quantity, waterLitres } = outcome.value;
				expect(strengthMadePct).toBeGreaterThanOrEqual(inputs.targetPct * (1 - ROUNDING));
				expect(quantity).toBeGreaterThan(0);
				expect(waterLitres).toBeGreaterThanOrEqual(0);
				expect(waterLitres).toBeLessThanOrEqual(inputs.litres);
			}),
			always(2000),
		);
		expect(made).toBeGreaterThan(500);
	});

	test("is a whole number of steps, less than one step too many", () => {
		fc.assert(
			fc.property(number(0, 1e6), number(0.01, 1000), (quantity, step) => {
				const measured = upTo(quantity, step);
				expect(measured).toBeGreaterThanOrEqual(quantity * (1 - ROUNDING) - ROUNDING * step);
				expect(measured - quantity).toBeLessThan(step * (1 + 1e-6));
				expect(Math.abs(measured / step - Math.round(measured / step))).toBeLessThan(1e-6);
			}),
			always(2000),
		);
	});
});

const inRounds: fc.Arbitrary<InRounds> = fc
	.record({
		perDay: fc.array(number(0, 20), { minLength: 1, maxLength: 4 }),
		starts: fc
			.uniqueArray(fc.integer({ min: 0, max: 1439 }), { minLength: 1, maxLength: 5 })
			.map((all) => all.sort((a, b) => a - b)),
		share: number(0, 1),
	})
	.map(({ perDay, starts, share }) =>
		equalRounds(perDay, starts, share * Math.min(...gapsBetween(starts))),
	);
const afterEachUse: fc.Arbitrary<Reprocessing> = fc
	.tuple(fc.array(number(0, 20), { minLength: 1, maxLength: 4 }), number(0, 2880))
	.map(([perDay, minutes]) => oneByOne(perDay, minutes));

describe("needs that find no kit", () => {
	test("are never more with more kits, and never more than all", () => {
		fc.assert(
			fc.property(fc.oneof(inRounds, afterEachUse), (reprocessing) => {
				let last = 1000 * (1 + ROUNDING);
				for (let kits = 1; kits <= 40; kits++) {
					const unmet = unmetPer1000(kits, reprocessing);
					expect(unmet).toBeGreaterThanOrEqual(0);
					expect(unmet).toBeLessThanOrEqual(last * (1 + ROUNDING) + 1e-12);
					last = unmet;
				}
			}),
			always(300),
		);
	});

	test("are never fewer than where an unmet need takes no kit", () => {
		fc.assert(
			fc.property(
				number(0.001, 30),
				number(1, 2880),
				fc.integer({ min: 1, max: 40 }),
				(perDay, turnaround, kits) => {
					const ours = unmetPer1000(kits, oneByOne([perDay], turnaround));
					const lost = 1000 * erlangB((perDay * turnaround) / 1440, kits);
					expect(ours).toBeGreaterThanOrEqual(lost * (1 - ROUNDING));
				},
			),
			always(500),
		);
	});

	test("are never fewer where rounds take longer", () => {
		fc.assert(
			fc.property(
				inRounds,
				fc.integer({ min: 1, max: 12 }),
				number(0, 1),
				(reprocessing, kits, share) => {
					const perRound = share * reprocessing.length.perRound;
					const quicker = { ...reprocessing, length: { ...reprocessing.length, perRound } };
					expect(unmetPer1000(kits, quicker)).toBeLessThanOrEqual(
						unmetPer1000(kits, reprocessing) * (1 + ROUNDING) + ROUNDING,
					);
				},
			),
			always(300),
		);
	});
});

describe("kits gone out of date", () => {
	test("with more uses fewer, yet uses and expiries together never fewer", () => {
		fc.assert(
			fc.property(
				fc.integer({ min: 0, max: 40 }),
				number(0, 20),
				number(0, 5),
				number(0.25, 90),
				(kitsInService, uses, more, readyLifeDays) => {
					const few = answerOf(expiriesPerDay, { kitsInService, usesPerDay: uses, readyLifeDays });
					const many = answerOf(expiriesPerDay, {
						kitsInService,
						usesPerDay: uses + more,
						readyLifeDays,
					});
					expect(many).toBeLessThanOrEqual(few * (1 + ROUNDING));
					expect(uses + more + many).toBeGreaterThanOrEqual((uses + few) * (1 - ROUNDING));
					expect(few).toBeLessThanOrEqual((kitsInService / readyLifeDays) * (1 + ROUNDING));
				},
			),
			always(1000),
		);
	});
});

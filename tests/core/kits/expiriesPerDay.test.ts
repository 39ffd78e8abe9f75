import { describe, expect, test } from "vitest";
import { expiriesPerDay } from "../../../src/core/kits/expiriesPerDay.ts";
import { expectWithin } from "../../expectWithin.ts";
import { answerOf } from "../answerOf.ts";

const expiries = (kitsInService: number, usesPerDay: number, readyLifeDays = 7) =>
	answerOf(expiriesPerDay, { kitsInService, usesPerDay, readyLifeDays });

test.each([
	[2, 0.6, 0.0409847],
	[3, 0.6, 0.100482],
	[4, 0.6, 0.183758],
	[6, 0.6, 0.396948],
	[3, 0, 0.428571],
])("%d kits, %d uses a day, ready for 7 days: %d a day", (kits, uses, expected) => {
	expectWithin(expiries(kits, uses), expected, 1e-6, "kits a day");
});

/** Density over distribution of a Gamma with whole shape, by its closed form. */
function byGamma(kits: number, rate: number, life: number): number {
	const x = rate * life;
	let term = Math.exp(-x);
	let below = 0;
	for (let k = 0; k < kits; k++) {
		below += term;
		if (k < kits - 1) term *= x / (k + 1);
	}
	return (rate * term) / (1 - below);
}

describe("agrees with the Gamma density over its distribution", () => {
	test.each([
		[1, 0.6, 7],
		[3, 1, 7],
		[5, 2.5, 3],
		[10, 1, 10],
		[20, 3, 7],
	])("%d kits, %d uses a day, %d days", (kits, rate, life) => {
		expectWithin(expiries(kits, rate, life), byGamma(kits, rate, life), 1e-10, "kits a day");
	});
});

describe("limits", () => {
	test("no kits, no expiries", () => {
		expect(expiries(0, 0.6)).toBe(0);
		expect(expiries(0, 0)).toBe(0);
	});

	test("very many uses leave none to expire", () => {
		expect(expiries(3, 500, 90)).toBe(0);
	});

	test("almost no uses: all kits expire in turn", () => {
		expectWithin(expiries(6, 1e-12), 6 / 7, 1e-9, "kits a day");
	});

	test("more kits expire more, more uses less", () => {
		for (let kits = 1; kits < 10; kits++)
			expect(expiries(kits + 1, 0.6)).toBeGreaterThan(expiries(kits, 0.6));
		for (let uses = 0; uses < 3; uses += 0.2)
			expect(expiries(4, uses + 0.2)).toBeLessThan(expiries(4, uses));
	});
});

import { describe, expect, test } from "vitest";
import { EveryKitsEnd } from "../../../src/core/kits/everyKitsEnd.ts";
import { expiriesPerDay } from "../../../src/core/kits/expiriesPerDay.ts";
import { OldestKits } from "../../../src/core/kits/oldestKits.ts";
import {
	type LikeDay,
	type RenewalStep,
	renewalSteps,
	together,
} from "../../../src/core/kits/renewalSteps.ts";
import { expectWithin } from "../../expectWithin.ts";

const WHOLE = Number.POSITIVE_INFINITY;
const life = (days: number) => ({ days, renewal: "when_expired" }) as const;
const dayOf = (uses: number, rounds: number): LikeDay => ({
	starts: Array.from({ length: rounds }, (_, i) => Math.floor((i * 1440) / rounds)),
	uses: Array.from({ length: rounds }, () => uses / rounds),
	usesAfterMidnight: 0,
	plannedMinutes: 0,
});

/** Mean kits that go out of date at a midnight, and how likely some are when none was used before it. */
function renewed(kits: number, days: number, steps: readonly RenewalStep[]) {
	const uses = steps.reduce((sum, step) => sum + step.uses, 0);
	const inputs = { kitsInService: kits, usesPerDay: uses, readyLifeDays: days + 1 };
	const extra = Number(expiriesPerDay.compute(inputs)) / steps.length;
	const chain =
		kits > 5 ? new OldestKits(kits, days + 1, steps, extra) : new EveryKitsEnd(kits, days + 1);
	const given = new Float64Array((kits + 1) ** 2);
	const nights = 8 * (days + 1);
	let [mean, some] = [0, 0];
	for (let night = 0; night < nights; night++) {
		const [midnight, ...others] = steps as [RenewalStep, ...RenewalStep[]];
		chain.go(midnight, given).forEach((chance, used) => {
			for (let x = 1; x <= kits; x++)
				mean += (x * chance * (given[used * (kits + 1) + x] as number)) / nights;
		});
		some += (1 - (given[0] as number)) / nights;
		for (const step of others) chain.go(step, given);
	}
	return { mean, some };
}

describe("rounds in which few kits are used, followed together", () => {
	const cases = [0.02, 0.4, 1.5, 5].flatMap((uses) =>
		[
			[4, 1, 24],
			[4, 3, 12],
			[9, 7, 24],
			[14, 3, 8],
		].map(([kits = 0, days = 0, rounds = 0]) => ({ uses, kits, days, rounds })),
	);
	test.each(cases)("$uses uses a day, $rounds rounds, $kits kits for $days days", (of) => {
		const day = dayOf(of.uses, of.rounds);
		const each = renewed(of.kits, of.days, renewalSteps(day, life(of.days), WHOLE));
		const together = renewed(of.kits, of.days, renewalSteps(day, life(of.days)));
		expectWithin(together.mean, each.mean, 0.02 * each.mean, "kits a night");
		expectWithin(together.some, each.some, 0.02 * each.some, "");
	});

	test("as many uses and fewer steps, up to six rounds one by one", () => {
		const stepsOf = (uses: number, rounds: number) => renewalSteps(dayOf(uses, rounds), life(3));
		expect(stepsOf(0.02, 6)).toHaveLength(7);
		expect(stepsOf(0.02, 24).length).toBeLessThan(4);
		expect(stepsOf(24, 24)).toHaveLength(25);
		for (const uses of [0.02, 1, 24]) {
			const all = stepsOf(uses, 24).reduce((sum, step) => sum + step.uses, 0);
			expectWithin(all, uses, 1e-9, "uses");
		}
	});

	test("only those whose kits end on the same day", () => {
		const day = { ...dayOf(0.02, 24), plannedMinutes: 300 };
		expect(renewalSteps(day, life(3)).map(({ target }) => target)).toEqual([3, 3, 4]);
	});

	test("renewed in time, every round by itself", () => {
		const steps = renewalSteps(dayOf(0.02, 24), { days: 3, renewal: "in_time" });
		expect(steps).toHaveLength(24);
	});
});

describe("where every kit is followed, rounds whose kits end on the same day are one step", () => {
	test.each([
		[0.4, 3, 4, 2],
		[6, 4, 3, 3],
		[20, 2, 3, 1],
	])("%d uses a day, %d rounds, %d kits for %d days", (uses, rounds, kits, days) => {
		const steps = renewalSteps(dayOf(uses, rounds), life(days), WHOLE);
		expect(together(steps)).toHaveLength(2);
		const each = renewed(kits, days, steps);
		const one = renewed(kits, days, together(steps));
		expectWithin(one.mean, each.mean, 1e-12 * each.mean, "kits a night");
		expectWithin(one.some, each.some, 1e-12 * each.some, "");
	});

	test("not those that renew any, nor those whose kits end on another day", () => {
		const inTime = renewalSteps(dayOf(1, 4), { days: 3, renewal: "in_time" });
		expect(together(inTime)).toEqual(inTime);
		const late = renewalSteps({ ...dayOf(1, 4), plannedMinutes: 500 }, life(3), WHOLE);
		expect(together(late).map(({ target }) => target)).toEqual([3, 3, 4]);
	});
});

test.each([
	[[0], 1440],
	[[420, 1140], 300],
	[[1439], 1],
	[[0, 1439], 2881],
	[[420, 840, 1260], 180],
])(
	"none that joins would have ended later than the kits of its round: rounds at %s",
	(starts, plannedMinutes) => {
		const day = { starts, uses: starts.map(() => 1), usesAfterMidnight: 1, plannedMinutes };
		for (const renewal of ["in_time", "when_expired"] as const)
			for (const { endsBy, target } of renewalSteps(day, { days: 0, renewal }))
				expect(endsBy).toBeLessThanOrEqual(target);
	},
);

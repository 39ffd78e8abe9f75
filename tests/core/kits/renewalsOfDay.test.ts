import { describe, expect, test } from "vitest";
import { always, mean } from "../../../src/core/counts/counts.ts";
import { EveryKitsEnd } from "../../../src/core/kits/everyKitsEnd.ts";
import { expiriesPerDay } from "../../../src/core/kits/expiriesPerDay.ts";
import type { LikeDay, ReadyLife } from "../../../src/core/kits/renewalSteps.ts";
import { renewalSteps, renews } from "../../../src/core/kits/renewalSteps.ts";
import { renewalsOfDay } from "../../../src/core/kits/renewalsOfDay.ts";
import { expectWithin } from "../../expectWithin.ts";

/** So many kits are followed by themselves whatever their life. */
const FOLLOWED = 14;

const dayOf = (uses: number, starts: readonly number[]): LikeDay => ({
	starts,
	uses: starts.map(() => (0.75 * uses) / starts.length),
	usesAfterMidnight: 0.25 * uses,
	plannedMinutes: 120,
});
const renewedAtOnce = (kitsInService: number, usesPerDay: number, age: number) =>
	Number(expiriesPerDay.compute({ kitsInService, usesPerDay, readyLifeDays: Math.max(0.5, age) }));

/** The age at which as many kits as are followed, with as many uses each, are renewed as often, found for this very number. */
function slowly(
	kits: number,
	uses: number,
	starts: readonly number[],
	life: ReadyLife,
	followed: number,
): number {
	const ofFew = (uses * followed) / kits;
	const wanted = renewalsOfDay(followed, dayOf(ofFew, starts), life).perDay;
	let [young, old] = [0.01, 4 * (life.days + 2)];
	for (let i = 0; i < 60; i++) {
		const age = (young + old) / 2;
		if (renewedAtOnce(followed, ofFew, age) > wanted) young = age;
		else old = age;
	}
	return renewedAtOnce(kits, uses, young);
}

describe.each(["when_expired", "in_time"] as const)("renewed of many kits, %s", (renewal) => {
	test.each([
		[1, 63, [480]],
		[1, 63, [480, 960]],
		[2, 42, [480, 960]],
		[8, FOLLOWED, [480]],
	])(
		"as with ages found for each number by itself, life %i days, beyond %i kits, rounds at %j",
		(days, followed, starts) => {
			const life = { days, renewal };
			for (const kits of [followed + 1, 100, 200])
				for (const perKit of [0.02, 0.17, 0.45]) {
					const uses = perKit * kits;
					const { perDay } = renewalsOfDay(kits, dayOf(uses, starts), life);
					const wanted = slowly(kits, uses, starts, life, followed);
					expectWithin(perDay, wanted, 0.02 * wanted + 1e-6 * uses, "kits a day");
				}
		},
	);
});

// Kits that end together: of those used, fewer are left to be renewed. One by one, each is renewed by itself.
test.each([
	[1, 63, 20],
	[2, 42, 1],
	[3, 31, 1],
	[8, FOLLOWED, 1],
])("over a life of %i days %i kits are followed, one more is not", (days, followed, uses) => {
	const meanGiven = (kits: number, used: number) => {
		const { given } = renewalsOfDay(kits, dayOf(uses, [480]), { days, renewal: "in_time" });
		const [{ first, chance } = always(0)] = given.map((of) => of(used));
		return chance.reduce((sum, each, more) => sum + each * (first + more), 0);
	};
	expect(meanGiven(followed, 0)).toBeGreaterThan(meanGiven(followed, 3) + 0.1);
	const apart = meanGiven(followed + 1, 0);
	expectWithin(meanGiven(followed + 1, 3), apart, 1e-3 * apart, "kits");
});

test.each([
	["when_expired", 22 + 1],
	["in_time", 22 - 1],
] as const)(
	"over a life of 22 days kits are renewed one by one, %s, of 21 they are not",
	(renewal, age) => {
		const perDay = (days: number) => renewalsOfDay(2, dayOf(0.1, [480]), { days, renewal }).perDay;
		expect(perDay(22)).toBe(renewedAtOnce(2, 0.1, age));
		expect(perDay(21)).not.toBe(renewedAtOnce(2, 0.1, age - 1));
		expectWithin(perDay(21), perDay(22), 0.1 * perDay(22), "kits a day");
	},
);

test("of a number of kits, as many are said to be renewed as there are left", () => {
	const { given } = renewalsOfDay(50, dayOf(1, [480]), { days: 2, renewal: "when_expired" });
	for (const used of [0, 5, 49, 50]) {
		const { first, chance } = given[0]?.(used) ?? { first: 0, chance: new Float64Array() };
		expect(first + chance.length - 1).toBeLessThanOrEqual(50 - used);
		expectWithin(
			chance.reduce((sum, each) => sum + each, 0),
			1,
			1e-9,
			"",
		);
	}
});

test.each([
	["when_expired", "for midnight", 1],
	["in_time", "for each of two rounds", 2],
] as const)("%s: renewals are told %s", (renewal, _, times) => {
	for (const kits of [3, FOLLOWED, 40])
		expect(renewalsOfDay(kits, dayOf(0.5, [480, 960]), { days: 3, renewal }).given).toHaveLength(
			times,
		);
});

test.each([3, FOLLOWED, FOLLOWED + 1, 30, 200])(
	"%i kits that keep only for their day: all that nobody used since the last round go at midnight",
	(kits) => {
		const day = dayOf(2, [480, 960]);
		const life = { days: 0, renewal: "when_expired" } as const;
		const { perDay, given } = renewalsOfDay(kits, day, life);
		// 0.75 come from the last round to midnight; hardly ever more than three.
		expectWithin(perDay, kits - 0.75, 0.01, "kits a day");
		const [{ first, chance } = always(0)] = given.map((of) => of(2));
		expectWithin(chance[kits - 2 - first] ?? 0, 1, 1e-9, "");
	},
);

/** Kits renewed a day once kits have long forgotten how they began: so many days are gone through first. */
function inTheLongRun(kits: number, day: LikeDay, life: ReadyLife): number {
	const steps = renewalSteps(day, life);
	const chain = new EveryKitsEnd(kits, Math.max(...steps.map(({ target }) => target)) + 1);
	const given = new Float64Array((kits + 1) ** 2);
	let sum = 0;
	for (let of = 0; of < FORGOTTEN + LONG; of++)
		for (const step of steps) {
			const uses = chain.go(step, given);
			if (!renews(step) || of < FORGOTTEN) continue;
			given.forEach((chance, at) => {
				const [used, renewed] = [Math.floor(at / (kits + 1)), at % (kits + 1)];
				sum += ((uses[used] as number) * chance * renewed) / LONG;
			});
		}
	return sum;
}
/** Whole rounds of a life of 3 or 4 days, and of what it takes to be ready again. */
const LONG = 60;
const FORGOTTEN = 1500;

// Kits that are rarely used forget slowly how they began: over a hundred days and more.
test.each([
	["in_time", 4, 0.1, [480, 960], 4],
	["in_time", 4, 0.1, [300, 480, 600, 700, 800, 900, 960, 1200], 4],
	["in_time", 3, 0.4, [300, 480, 600, 700, 800, 900, 960, 1200], 4],
	["when_expired", 4, 0.02, [480, 960], 3],
	["when_expired", 4, 0.5, [480], 3],
] as const)(
	"%s, %d kits and %d uses a day, rounds at %j: as in the long run",
	(renewal, kits, uses, starts, days) => {
		const life = { days, renewal };
		const { perDay } = renewalsOfDay(kits, dayOf(uses, starts), life);
		const wanted = inTheLongRun(kits, dayOf(uses, starts), life);
		expectWithin(perDay, wanted, 0.015 * wanted, "kits a day");
	},
);

test("where more kits end on a later day than there are, for sure, the others are none", () => {
	// Hardly any chance is left of so many on one day: what has no chance at all tends to nothing, not to a number divided by none.
	const day = {
		starts: [443, 591, 767, 1233, 1433],
		uses: [0.0367, 3.2495, 0.9952, 0.0492, 0.0024],
		usesAfterMidnight: 1.2467,
		plannedMinutes: 920,
	};
	const { perDay } = renewalsOfDay(9, day, { days: 7, renewal: "when_expired" });
	expect(perDay).toBeGreaterThan(0);
	expect(perDay).toBeLessThan(0.1);
});

test.each(
	[4, 9, FOLLOWED].flatMap((kits) =>
		[0.02, 0.3, 0.54, 0.9].flatMap((perKit) =>
			(["when_expired", "in_time"] as const).map((renewal) => [kits, perKit, renewal] as const),
		),
	),
)(
	"%i kits with %d uses a day each, %s: some number is renewed, whatever was used",
	(kits, perKit, renewal) => {
		const day = dayOf(perKit * kits, [420, 840, 1260]);
		for (const given of renewalsOfDay(kits, day, { days: 7, renewal }).given)
			for (let used = 0; used <= kits; used++) {
				const all = given(used).chance.reduce((sum, chance) => sum + chance, 0);
				// Of each step as much is left out as hardly ever comes, 1e-9 of it.
				expectWithin(all, 1, 1e-6, "chance");
			}
	},
);

test("kits that keep long are renewed one by one, all in the last round before their midnight", () => {
	const { given, perDay } = renewalsOfDay(6, dayOf(0.4, [420, 1140]), {
		days: 30,
		renewal: "in_time",
	});
	const each = given.map((of) => mean(of(0)));
	expect(each).toHaveLength(2);
	expect(each[0]).toBe(0);
	// Beyond six of them none is renewed: that is seen in the tenth digit.
	expectWithin(each[1], perDay, 1e-6 * perDay, "kits a day");
	expectWithin(perDay, renewedAtOnce(6, 0.4, 29), 1e-12, "kits a day");
});

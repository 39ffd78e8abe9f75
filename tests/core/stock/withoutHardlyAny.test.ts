import { expect, test } from "vitest";
import { soaks } from "../../../src/core/rounds/loads.ts";
import type { RoundsOfDay } from "../../../src/core/rounds/roundsOfDay.ts";
import { meanUse } from "../../../src/core/stock/meanUse.ts";
import { type Followed, withoutHardlyAny } from "../../../src/core/stock/withoutHardlyAny.ts";
import { expectWithin } from "../../expectWithin.ts";

const CONFIDENCE = 0.95;
/** Of a Poisson number of 4 kits so many are enough 9995 times of 10,000, and one fewer are not. */
const ENOUGH = 12;
const day: RoundsOfDay = { kind: "in_rounds", starts: [0, 60], kits: [1, 1], byKind: [[1, 1]] };
const none = { perDay: 0, perRound: 0, perLoad: [0], perKit: [0], perDescale: 0 };
const found = (rates: typeof none, of: RoundsOfDay = day, descaleEvery = 3) =>
	withoutHardlyAny({ rates, days: [of, of], loads: soaks(2), descaleEvery }, CONFIDENCE);

test.each([
	["a round, of which there are four", { perRound: 1 }, 4],
	["a load, of which each has a kit", { perLoad: [1] }, ENOUGH],
	["a kit", { perKit: [1] }, ENOUGH],
	["a descaling, every third round", { perDescale: 1 }, 2],
])(
	"hardly any for %s is counted by the day, at the most that hardly ever comes",
	(_what, small, most) => {
		const few = { ...none, perDay: 1e6, ...small };
		const { use, byTheDay } = found(few) as Followed;
		expectWithin(byTheDay, most, 1e-12, "");
		expect(use.rates).toEqual({ ...none, perDay: 1e6 + most / 2 });
	},
);

test.each([0, 9])("without descalings what one would take, %d, is none of it", (perDescale) => {
	const { use, byTheDay } = found(
		{ ...none, perDay: 1e6, perRound: 1, perDescale },
		day,
		0,
	) as Followed;
	expectWithin(byTheDay, 4, 1e-12, "");
	expect(use.rates).toEqual({ ...none, perDay: 1e6 + 2, perDescale });
});

test("after each use every kit is a round", () => {
	const oneByOne: RoundsOfDay = { kind: "after_each_use", kits: [2], byKind: [[2]] };
	expectWithin(found({ ...none, perDay: 1e6, perRound: 1 }, oneByOne)?.byTheDay, ENOUGH, 1e-12, "");
});

test.each([
	["the smallest first, as long as they are hardly any together", 1 - 1e-6, { perKit: [0] }],
	["up to just as much", 1 + 1e-6, { perKit: [0], perLoad: [0] }],
])("%s", (_what, part, gone) => {
	const rates = { ...none, perKit: [0.3], perLoad: [0.5], perDay: 1 };
	const both = (0.3 + 0.5) * ENOUGH;
	// So much by the day that a thousandth of all is about what both come to.
	const others = meanUse({ rates, days: [day, day], loads: soaks(2), descaleEvery: 3 }) - 2;
	const perDay = ((both * 1000 - others) / 2) * part;
	const { use } = found({ ...rates, perDay }) as Followed;
	expect({ ...use.rates, perDay: 0 }).toEqual({ ...rates, ...gone, perDay: 0 });
});

test("what counts is followed, and what there is none of is no part", () => {
	expect(found({ ...none, perRound: 5, perKit: [1] })).toBe(undefined);
	expect(found({ ...none, perDay: 1e6 })).toBe(undefined);
	expect(found(none)).toBe(undefined);
});

import { expect, test } from "vitest";
import { problemsOf } from "../../../../src/core/outcome.ts";
import { backAfterEachUse } from "../../../../src/core/plan/kits/backAfterEachUse.ts";
import { flatDay } from "../../../../src/core/rounds/dayClock.ts";
import { outcomeOf } from "../../answerOf.ts";

/** One person who works two hours on each kit does 12 a day, two do 24. */
test.each([
	[1, [11.9], true],
	[1, [12], false],
	[1, [5, 18.9], true],
	[1, [5, 19.1], false],
	[2, [23.9], true],
	[2, [24], false],
])("%d at work, %o kits used a day: done %s", (people, usesPerDay, done) => {
	const { ok } = outcomeOf(backAfterEachUse, {
		usesPerDay,
		hourShares: flatDay,
		hands: { people, workMinutes: 120, aloneMinutes: 30 },
		readyLifeDays: 7,
	});
	expect(ok).toBe(done);
});

test("more uses than hands can do lead to those who work", () => {
	const refused = outcomeOf(backAfterEachUse, {
		usesPerDay: [13],
		hourShares: flatDay,
		hands: { people: 1, workMinutes: 120, aloneMinutes: 30 },
		readyLifeDays: 7,
	});
	expect(problemsOf(refused)).toMatchObject([
		{ code: "too-few-hands", file: "unit.csv", column: "workers_per_round" },
	]);
});

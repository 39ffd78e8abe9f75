import { expect, test } from "vitest";
import { poissonTerms } from "../../../src/core/counts/poisson.ts";
import { type InRounds, RoundsGoneThrough } from "../../../src/core/kits/roundsGoneThrough.ts";
import { flatDay } from "../../../src/core/rounds/dayClock.ts";
import { expectWithin } from "../../expectWithin.ts";

const DAY = 1440;
const plan = (change: Partial<InRounds> = {}) =>
	new RoundsGoneThrough({
		kind: "in_rounds",
		starts: [420, 1260],
		length: { perRound: 60, perKit: 100, loads: [] },
		plannedMinutes: 110,
		usesPerDay: [1, 1, 1, 2],
		hourShares: flatDay,
		life: null,
		...change,
	});
const within = (found: number, minutes: number) =>
	expectWithin(found, minutes / DAY, 1e-12, "kits");

/** Minutes of one use a day; on the last day there are two. */
test.each([
	["the first, after a day like its own", 0, {}, 600, 180, 0],
	["the second of a day", 1, {}, 840, 0, 0],
	["on a day with more", 6, {}, 180 + 2 * 420, 180, 0],
	["with water that takes an hour", 0, { waterMinutes: 60 }, 600, 240, 60],
	["water for the second", 1, { waterMinutes: 60 }, 840, 0, 60],
	["water from before midnight", 0, { waterMinutes: 500 }, 600, 600, 500],
	["water over midnight, on a day with more", 6, { waterMinutes: 500 }, 600, 600, 80 + 2 * 420],
	["one round a day", 1, { starts: [600] }, DAY, 840, 0],
])("kits that came to a round: %s", (_what, at, change, came, beforeMidnight, late) => {
	const round = plan(change).rounds[at];
	within(round?.came as number, came);
	within(round?.cameBeforeMidnight as number, beforeMidnight);
	within(round?.late as number, late);
});

test("each round begins, and goes on to the next or over midnight", () => {
	const { rounds } = plan({ usesPerDay: [1, 2] });
	expect(rounds.map(({ index, start, next, midnight }) => [index, start, next, midnight])).toEqual([
		[0, 420, 1260, undefined],
		[1, 1260, DAY + 420, DAY],
		[0, DAY + 420, DAY + 1260, undefined],
		[1, DAY + 1260, 2 * DAY + 420, 2 * DAY],
	]);
});

/** Days by their first round: those of one letter are alike. */
test.each([
	["the days before and after count", {}, [1, 1, 1, 2, 1, 1, 1, 1], "AABCDAAA"],
	[
		"also the day before that, where water is boiled",
		{ waterMinutes: 1 },
		[1, 1, 2, 2, 2],
		"ABCDE",
	],
	["and none before that", { waterMinutes: 60 }, [1, 2, 1, 1, 1, 1], "ABCDEE"],
	["without it", {}, [1, 1, 2, 2, 2, 2], "ABCDDD"],
	["however many there are", {}, [2, 2, 2], "AAA"],
	["two days that differ, in their rounds too", {}, [1, 2], "AB"],
])("rounds that are alike: %s", (_what, change, usesPerDay, letters) => {
	const { rounds } = plan({ ...change, usesPerDay });
	const names = [...new Set(rounds.map(({ likeness }) => likeness))];
	expect(names).toHaveLength(2 * new Set(letters).size);
	const firsts = rounds.filter(({ index }) => index === 0).map(({ likeness }) => likeness);
	const known = [...new Set(firsts)];
	expect(firsts.map((name) => "ABCDE"[known.indexOf(name)]).join("")).toBe(letters);
});

test("what came to rounds that are alike is the same to the last digit, and one object", () => {
	const all = plan({ usesPerDay: new Array(30).fill(0.7), waterMinutes: 33 });
	for (const round of all.rounds) {
		const like = all.rounds[round.index] as typeof round;
		expect([round.came, round.cameBeforeMidnight, round.late]).toEqual([
			like.came,
			like.cameBeforeMidnight,
			like.late,
		]);
		expect(all.usedBefore(round)).toEqual(poissonTerms(like.came));
		expect(all.usedBefore(round)).toBe(all.usedBefore(like));
	}
});

test.each([
	[0, 8, 7],
	[1, 8, 5],
	[0, 3, 3],
])("round %d takes of %d kits those with which it ends before the next: %d", (at, kits, most) => {
	const all = plan();
	expect(all.mostIn(all.rounds[at] as (typeof all.rounds)[0], kits)).toBe(most);
});

test("the day that all are like on average, also where sums differ by rounding", () => {
	const { starts, plannedMinutes, uses, usesAfterMidnight } = plan({
		usesPerDay: [1, 5],
	}).likeDay();
	expect([starts, plannedMinutes]).toEqual([[420, 1260], 110]);
	within(uses[0] as number, 3 * 840);
	within(uses[1] as number, 3 * 180);
	within(usesAfterMidnight, 3 * 420);
	const third = plan({ usesPerDay: [0.1, 0.1, 0.1] }).likeDay();
	expect(third).toEqual(plan({ usesPerDay: [0.1] }).likeDay());
});

import { expect, test } from "vitest";
import { countedAnew, ListsOfLoads, loadsIn, NEVER } from "../../../src/core/water/loadsSoFar.ts";
import { expectWithin } from "../../expectWithin.ts";

/** Loads from `first` on, all equally likely. */
const evenly = (first: number, length: number) => ({
	first,
	length,
	chance: new Float64Array(64).fill(1 / length, 0, length),
});

test("loads are added to a state before, among and after those it has, in lists used before", () => {
	const lists = new ListsOfLoads();
	const used = [16, 32, 64].map((length) => new Float64Array(length).fill(1));
	lists.giveBack(used.map((chance) => ({ first: 0, length: chance.length, chance })));
	let sum = lists.added(undefined, evenly(20, 10), 0.5);
	sum = lists.added(sum, evenly(10, 4), 0.25);
	sum = lists.added(sum, evenly(40, 5), 0.125);
	sum = lists.added(sum, evenly(22, 2), 0.125);
	if (!sum) throw new Error("There is a state.");
	const { first, chance } = loadsIn([sum]);
	expect([first, sum.first, sum.length, chance.length]).toEqual([0, 10, 35, 45]);
	chance.forEach((likely, loads) => {
		const expected =
			(loads >= 20 && loads < 30 ? 0.05 : 0) +
			(loads >= 10 && loads < 14 ? 0.0625 : 0) +
			(loads >= 40 ? 0.025 : 0) +
			(loads === 22 || loads === 23 ? 0.0625 : 0);
		expectWithin(likely, expected, 1e-15, "chance");
	});
	countedAnew(sum);
	expectWithin(loadsIn([sum]).chance[0], 1, 1e-15, "chance");
});

test("what is never is not added", () => {
	const lists = new ListsOfLoads();
	expect(lists.added(undefined, evenly(3, 2), NEVER / 2)).toBe(undefined);
	const known = lists.none(0.5);
	expect(lists.added(known, evenly(3, 2), NEVER / 2)).toBe(known);
	expect(known.length).toBe(1);
});

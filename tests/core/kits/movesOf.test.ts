import { expect, test } from "vitest";
import { movesOf } from "../../../src/core/kits/movesOf.ts";
import { NEVER } from "../../../src/core/kits/renewalSteps.ts";
import { placeOf, statesOf } from "../../../src/core/kits/waysToEnd.ts";

/** Where kits lead that end so many on each day, with so many others used. */
function ledTo(counts: number[], used: number, moves: ReturnType<typeof movesOf>) {
	const left = counts.reduce((sum, n) => sum + n, 0);
	const state = placeOf(Uint8Array.from(counts), left);
	const { next, renewed, less } = moves[used] as (typeof moves)[number];
	const to = statesOf(left + used, counts.length)[next[state] as number] as Uint8Array;
	const fewer = left > 0 ? statesOf(left - 1, counts.length)[less[state] as number] : [];
	return { to: [...to], renewed: renewed[state], fewer: [...(fewer as Uint8Array)] };
}

test("at midnight what ends today joins; what was used ends with it", () => {
	const moves = movesOf(4, 4, 0, NEVER, 3, "after", 1);
	expect(ledTo([2, 1, 0, 0], 1, moves)).toEqual({
		to: [1, 0, 0, 3],
		renewed: 2,
		fewer: [1, 1, 0, 0],
	});
});

test("a day begins before: what ended before it counts to its first", () => {
	const moves = movesOf(4, 4, NEVER, NEVER, 3, "before", 1);
	expect(ledTo([1, 1, 1, 1], 0, moves).to).toEqual([2, 1, 1, 0]);
	expect(ledTo([0, 0, 2, 1], 1, moves).to).toEqual([0, 2, 1, 1]);
});

test("of oldest kits that end together one joins, in each round; those that end later stay", () => {
	const once = movesOf(5, 4, NEVER, 1, 3, "none", 1);
	const twice = movesOf(5, 4, NEVER, 1, 3, "none", 2);
	expect(ledTo([0, 3, 0, 2], 0, once)).toMatchObject({ to: [0, 2, 0, 3], renewed: 1 });
	expect(ledTo([0, 3, 0, 2], 0, twice)).toMatchObject({ to: [0, 1, 0, 4], renewed: 2 });
	expect(ledTo([0, 1, 2, 2], 0, twice)).toMatchObject({ to: [0, 1, 2, 2], renewed: 0 });
	expect(ledTo([0, 0, 4, 1], 0, twice)).toMatchObject({ to: [0, 0, 4, 1], renewed: 0 });
});

test("what was used ends on the day that the round leads to, also where others end later", () => {
	const moves = movesOf(3, 3, NEVER, NEVER, 1, "none", 1);
	expect(ledTo([1, 0, 1], 1, moves)).toMatchObject({ to: [1, 1, 1], renewed: 0 });
	expect(ledTo([0, 0, 1], 2, moves)).toMatchObject({ to: [0, 2, 1], renewed: 0 });
	const joining = movesOf(4, 3, 0, NEVER, 1, "none", 1);
	expect(ledTo([2, 0, 1], 1, joining)).toMatchObject({ to: [0, 3, 1], renewed: 2 });
});

test("with all used there is one way, and none fewer", () => {
	expect(ledTo([0, 0, 0], 2, movesOf(2, 3, 0, 1, 2, "none", 1))).toMatchObject({
		to: [0, 0, 2],
		renewed: 0,
	});
});

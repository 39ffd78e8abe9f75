import { expect, test } from "vitest";
import { type Figure, nameFigure } from "../../../../src/core/calculation.ts";
import { DescalingsDue } from "../../../../src/core/plan/rounds/descalingsDue.ts";
import type { RoundsOfDay } from "../../../../src/core/rounds/roundsOfDay.ts";
import { missing } from "../../answerOf.ts";

/** A day of rounds of which nine in ten run. */
const nineInTen: Figure<RoundsOfDay> = nameFigure("", {
	kind: "in_rounds",
	kits: Array(9).fill(Math.LN10),
	byKind: [],
} as never);

/** In which of nine rounds a descaling is due. */
function dueIn(every: Figure, since: number, rounds = nineInTen): number[] {
	const due = new DescalingsDue(every, since);
	return Array.from({ length: 9 }, (_, at) => at).filter((at) => due.at(rounds, at));
}

// Rounds expected to have run: 0.9, 1.8, 2.7, 3.6, 4.5, 5.4, 6.3, 7.2, 8.1.
test.each([
	["what runs over counts towards the next", 2, 0, [2, 4, 6, 8]],
	["those done before the plan count", 2, 1.5, [0, 2, 5, 7]],
	["one that was missed is due at once; the count then begins again", 2, 2, [0, 3, 5, 7]],
	["missed long ago, once", 2, 7, [0, 3, 5, 7]],
	["never", 0, 7, []],
	["one that the next round makes due, whether or not that one runs for certain", 4, 3, [0, 5]],
	["not one that it does not", 4, 2, [2, 6]],
	["in each round, whichever of them run", 1, 0, [0, 1, 2, 3, 4, 5, 6, 7, 8]],
])("%s", (_, every, since, rounds) => {
	expect(dueIn(nameFigure("", every), since)).toEqual(rounds);
});

test("not known by what cannot be read", () => {
	expect(dueIn(missing("bad-cell"), 7)).toEqual([]);
	expect(dueIn(nameFigure("", 2), 7, missing("bad-cell"))).toEqual([]);
});

import { expect, test } from "vitest";
import { piecesHeld } from "../../../src/core/methods/piecesHeld.ts";
import type { TimedStep } from "../../../src/core/rounds/timedSteps.ts";

/** Steps one after the other from 8:00, those that wait in minutes below 0. */
function stepsOf(...minutes: readonly number[]): TimedStep[] {
	let clock = 480;
	return minutes.map((each, i) => {
		const startsAt = clock;
		clock += Math.abs(each);
		return {
			step: `step ${i}`,
			startsAt,
			endsAt: clock,
			handsOn: each < 0 ? "no" : "yes",
			kits: 1,
			load: 1,
			method: "boiling",
		};
	});
}

test.each([
	["heated for 30 minutes, then held for 20", [-30, -20, 10], 510],
	["heated for as long as it is held: the second", [-20, -20], 500],
	["heated, held, and left to cool for longer", [-30, -20, -60], 510],
	["held for longer than wanted", [-15, -25], 495],
	["only held: it boils when the load goes in", [-20, 10], 480],
	["heated and held in one: at its end", [-50], 510],
	["put in by hand, then heated and held in one", [5, -50], 515],
	["shorter than wanted: from its start", [-5, -10], 485],
	["shorter than wanted: the longest, though another comes after it", [-10, -5], 480],
	["shorter than wanted, twice alike: from the second's start", [-10, -10], 490],
	["no step waits", [30], 490],
])("%s", (_what, minutes, from) => {
	expect(piecesHeld(stepsOf(...minutes), 20)).toEqual({ from, until: from + 20 });
});

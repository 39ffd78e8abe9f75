import { expect, test } from "vitest";
import { LotsOfWater } from "../../../src/core/water/lotsOfWater.ts";

/** Eight hours, ten hours and a day and a half from round to round; the third asks for two loads. */
const ROUNDS = [
	{ at: 0, loads: 1, day: 0 },
	{ at: 480, loads: 1, day: 0 },
	{ at: 1080, loads: 2, day: 0 },
	{ at: 3240, loads: 1, day: 2 },
];

/** Goes through fires ("0") and rounds that run ("0!") or do not ("0-"), and says after each whether something stands ready, and what is new. */
function followed(happenings: string, lastsMinutes: number, waterMinutes = 300): string {
	const lots = new LotsOfWater(ROUNDS, waterMinutes, lastsMinutes);
	const names = new Map([[lots.none, "-"]]);
	let now = lots.none;
	const said: string[] = [];
	for (const happening of happenings.split(" ")) {
		const round = Number(happening[0]);
		if (happening.endsWith("!")) now = lots.passed(now, round).used;
		else if (happening.endsWith("-")) now = lots.passed(now, round).idle;
		else now = lots.decided(now, round);
		if (!names.has(now)) names.set(now, "abcdefg"[names.size - 1] as string);
		said.push(names.get(now) as string);
	}
	return said.join(" ");
}

test.each([
	["a round that runs uses its water, and the next is boiled for", "0 0! 1 1!", 600, "a - b -"],
	["water that was not used is kept for the next", "0 0- 1 1!", 600, "a a a -"],
	["as long as it lasts, to the minute", "0 0- 1 1!", 480, "a a a -"],
	["and no longer", "0 0- 1 1!", 479, "a - b -"],
	["less than a round asks for does not serve it", "0 0- 1 1- 2 2!", 4000, "a a a a b a"],
	["more than it asks for does", "2 2- 3 3!", 2160, "a a a -"],
	["if it is still in date", "2 2- 3", 2159, "a - b"],
	["the oldest goes first", "0 0- 2 1! 2", 2000, "a a b c c"],
	["after the last round nothing is kept", "3 3-", 2000, "a -"],
])("%s", (_what, happenings, lasts, expected) => {
	expect(followed(happenings, lasts)).toBe(expected);
});

test.each([
	["rounds until then may each use one", "0 1", 480, "a b"],
	["one begins just before, it may not", "0 1", 479, "a a"],
	["both are enough for both", "0 1 0! 1! 2", 480, "a b c - d"],
])("where the fire is lit before the round before: %s", (_what, happenings, water, expected) => {
	expect(followed(happenings, 1000, water)).toBe(expected);
});

test("what is asked again is the same", () => {
	const lots = new LotsOfWater(ROUNDS, 300, 600);
	const lit = lots.decided(lots.none, 0);
	expect(lots.decided(lots.none, 0)).toBe(lit);
	expect(lots.passed(lit, 0)).toBe(lots.passed(lit, 0));
	expect(lots.passed(lit, 0)).toEqual({ used: lots.none, idle: lit });
	// Lit before, for a round before: what stands ready is one thing, however it came about.
	expect(lots.decided(lots.passed(lit, 0).used, 1)).not.toBe(lit);
});

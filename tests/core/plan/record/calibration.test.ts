import { expect, test } from "vitest";
import { calibration } from "../../../../src/core/plan/record/calibration.ts";
import type { ComparedDay } from "../../../../src/core/plan/record/comparedDays.ts";

/** Days on which 10 were set aside, one for each number done. */
const days = (...done: readonly number[]): ComparedDay[] =>
	done.map((each, at) => ({ date: `2027-01-${at + 10}`, done: each, expected: 6, setAside: 10 }));
const times = (count: number, done: number) => Array.from({ length: count }, () => done);

test.each([
	[
		"nothing set aside, nothing to judge",
		[{ date: "2027-01-01", done: 3, expected: 2, setAside: null }],
		undefined,
	],
	["enough on every day of a month is no proof", days(...times(31, 9)), [31, 31, "as_asked"]],
	// 20 of 31: the interval ends at 0.81, below 0.95.
	["11 days of 31 too little", days(...times(20, 10), ...times(11, 11)), [31, 20, "too_little"]],
	[
		"one more than set aside once in 20 is what was asked for",
		days(...times(19, 10), 11),
		[20, 19, "as_asked"],
	],
	// 100 days of which 9 would have been enough each time: from 0.964.
	["one less would have done on each of 100 days", days(...times(100, 9)), [100, 100, "too_much"]],
	["all of it was needed on 100 days", days(...times(100, 10)), [100, 100, "as_asked"]],
] as const)("%s", (_, compared, expected) => {
	const found = calibration(compared, 0.95, 1);
	expect(found && [found.days, found.enough, found.verdict]).toEqual(expected);
});

import { describe, expect, test } from "vitest";
import type { DayOfMeasure } from "../../../../src/core/plan/record/daysOfMeasure.ts";
import type { ItemAgainstPlan } from "../../../../src/core/plan/record/itemsAgainstPlan.ts";
import { readWorkbook } from "../../../../src/core/read/readWorkbook.ts";
import { addDays } from "../../../../src/core/values/date.ts";
import { dailyPicture } from "../../../../src/ui/subjects/month/dailyPicture.ts";
import { failedAnswer, failedOfDays } from "../../../../src/ui/subjects/month/failedAnswer.ts";
import { failedCells } from "../../../../src/ui/subjects/month/failedPicture.ts";
import { itemsAnswer, itemsOfDays } from "../../../../src/ui/subjects/month/itemsAnswer.ts";
import { needsAnswer, needsOfDays } from "../../../../src/ui/subjects/month/needsAnswer.ts";
import { spanAnswer } from "../../../../src/ui/subjects/month/spanAnswer.ts";
import { dayPoints, monthPoints } from "../../../../src/ui/subjects/month/spanPoint.ts";
import { smallUnit } from "../../../core/smallUnit.ts";

/** Days from the 1st of March on, each as [done, expected, set aside]. */
const daysOf = (...days: readonly (readonly (number | undefined)[])[]): DayOfMeasure[] =>
	days.map(([done, expected, setAside], at) => ({
		date: addDays("2027-03-01", at),
		done,
		expected,
		setAside,
	}));

describe("births and kits used of some days, in a sentence", () => {
	test.each([
		[
			"enough on each day",
			daysOf([4, 6, 10], [10, 6.5, 10]),
			"What was prepared for was enough for the births on every day planned and recorded (2). Births by the plan’s average: 12.5; births recorded: 14.",
		],
		[
			"more on one, and a gap",
			daysOf([11, 6, 10], [10, 6.5, 10], [undefined, 6, 10]),
			"On 1 of 2 days planned and recorded more births came than were prepared for. Births by the plan’s average: 12.5; births recorded: 21. Not recorded: 1 of 3 days; they are gaps, and not 0.",
		],
		["no plan", daysOf([1], [0]), "1 birth on the days recorded; of none of them a plan was kept."],
		["no record", daysOf([undefined, 6, 10]), "Nothing is recorded of births on these days."],
	])("births: %s", (_what, days, words) => {
		expect(spanAnswer("births", days)).toBe(words);
	});

	// By chance around 3 expected: from 0 (0.0498 > 0.025) to 7 (at most 6 has 0.9665, at most 7 0.9881).
	test.each([
		[7, "The kits used fit the plan."],
		[8, "More kits were used than planned, and chance alone does not explain it."],
	])("kits: %d used where 3 were expected", (used, words) => {
		expect(spanAnswer("kits_used", daysOf([used, 3]))).toBe(
			`${words} Over the days planned and recorded (1), kits used by the plan’s average: 3; recorded: ${used}; chance alone gives 0 to 7.`,
		);
	});

	test("fewer kits than chance gives around 9", () => {
		// At most 3 has 0.0212, at most 4 0.0550.
		expect(spanAnswer("kits_used", daysOf([3, 9]))).toMatch(/^Fewer kits were used/);
		expect(spanAnswer("kits_used", daysOf([4, 9]))).toMatch(/^The kits used fit/);
	});
});

test("a day not recorded has no point, and a day not planned no band", () => {
	const days = daysOf([0, 0.5, undefined], [undefined, 0.5, 2], [3]);
	expect(dayPoints(days, "set_aside").map(({ done, low, high }) => [done, low, high])).toEqual([
		[0, undefined, undefined],
		[undefined, 0, 2],
		[3, undefined, undefined],
	]);
	// Around 0.5: at most 1 has 0.9098, at most 2 0.9856.
	expect(dayPoints(days, "by_chance").map(({ high }) => high)).toEqual([2, 2, undefined]);
});

test("a month is the mean of its days that are planned and recorded", () => {
	const days = [
		...daysOf([4, 6, 10], [8, 6, 10], [90], [undefined, 60, 70]),
		{ date: "2027-04-01", done: undefined, expected: 6, setAside: 10 },
		{ date: "2027-05-01", done: 5, expected: undefined, setAside: undefined },
	];
	expect(monthPoints(days)).toEqual([
		// Around 12: at most 5 has 0.0203, at most 6 0.0458; at most 18 has 0.9626, at most 19 0.9787.
		{
			from: "2027-03-01",
			to: "2027-03-04",
			done: 6,
			expected: 6,
			low: 3,
			high: 9.5,
			recorded: 3,
			planned: 3,
		},
		{
			from: "2027-04-01",
			to: "2027-04-01",
			done: undefined,
			expected: 6,
			low: undefined,
			high: undefined,
			recorded: 0,
			planned: 1,
		},
		{
			from: "2027-05-01",
			to: "2027-05-01",
			done: 5,
			expected: undefined,
			low: undefined,
			high: undefined,
			recorded: 1,
			planned: 0,
		},
	]);
});

describe("needs that found no kit ready, in a sentence", () => {
	const share = { days: 3, accepted: 0.001, verdict: "cannot_tell" } as const;

	test.each([
		[
			{ ...share, unmet: 0, needs: 20, between: { low: 0, high: 0.1684 } },
			"A kit was ready every time one was needed (20), on the days on which uses were written down: in the long run between 0 and 170 in 1\u202f000. The plan accepts 1 in 1\u202f000. So few times cannot tell yet whether that holds.",
		],
		[
			{ ...share, unmet: 2, needs: 20, between: { low: 0.0123, high: 0.317 }, verdict: "more" },
			"Times no kit was ready when needed: 2 of 20, on the days on which uses were written down: in the long run between 12 and 320 in 1\u202f000. The plan accepts 1 in 1\u202f000. That is more than it accepts, beyond chance.",
		],
		[
			// 2 of 240, Clopper and Pearson at 95 of 100: from 1.0108 in 1,000; two digits would make it the 1 that is accepted.
			{
				...share,
				unmet: 2,
				needs: 240,
				between: { low: 0.0010108, high: 0.0298 },
				verdict: "more",
			},
			"Times no kit was ready when needed: 2 of 240, on the days on which uses were written down: in the long run between 1.0108 and 30 in 1\u202f000. The plan accepts 1 in 1\u202f000. That is more than it accepts, beyond chance.",
		],
		[
			{ ...share, unmet: 0, needs: 0, between: undefined },
			"No kit was needed on the days on which uses were written down.",
		],
		[
			undefined,
			"Nothing is recorded of uses on these days, so it is not known whether a kit was ready whenever one was needed.",
		],
	] as const)("%o", (found, words) => {
		expect(needsAnswer(found)).toBe(words);
	});
});

describe("what was used of each item, in a sentence", () => {
	const item = (name: string, used: number, largest: number): ItemAgainstPlan => ({
		item: name,
		measure: "piece",
		used,
		planned: 100,
		low: used - largest,
		high: used + largest,
	});

	test.each([
		[[], false, "Nothing is recorded of what was used of the items of the store on these days."],
		[
			[],
			true,
			"What was used is written down, but not the rounds, kits and pieces it went for, so it cannot be compared with the plan.",
		],
		[
			[item("gauze", 120, 20), item("soap", 90, 20)],
			true,
			"What was used fits what the plan takes, as far as one issue more or less can tell; items compared: 2.",
		],
		[
			[item("gauze", 121, 20), item("soap", 79, 20), item("gloves", 100, 0)],
			true,
			"More went than the plan takes of: gauze (121 instead of 100). Less went than the plan takes of: soap (79 instead of 100).",
		],
	])("%o", (items, isAnyKept, words) => {
		expect(itemsAnswer(items, isAnyKept)).toBe(words);
	});
});

describe("checks that failed", () => {
	const failures = {
		checks: 20,
		failed: [
			{ kit: "A", finding: "not clean" },
			{ kit: "A", finding: "not clean" },
			{ kit: "B", finding: "not clean" },
			{ kit: "C", finding: "damage was seen" },
		],
		byFinding: [
			{ name: "not clean", times: 3 },
			{ name: "damage was seen", times: 1 },
		],
		byKit: [
			{ name: "A", times: 2 },
			{ name: "B", times: 1 },
			{ name: "C", times: 1 },
		],
	};

	test("in a sentence", () => {
		expect(failedAnswer(failures)).toBe(
			"Readiness checks that failed: 4 of 20; in the long run between 6 and 44 of 100. Most often found: not clean (3 times). Most often of kit A (2 times).",
		);
		const none = { checks: 3, failed: [], byFinding: [], byKit: [] };
		expect(failedAnswer(none)).toBe("Every readiness check on these days was passed: 3.");
		expect(failedAnswer({ ...none, checks: 0 })).toBe(
			"Nothing is recorded of readiness checks on these days.",
		);
	});

	test("kits for which there is no room are still in the sums", () => {
		expect(
			failedCells(failures, 1).map(({ kit, finding, times }) => [finding, kit, times]),
		).toEqual([
			["not clean", "A", 2],
			["not clean", "in all", 3],
			["damage was seen", "in all", 1],
		]);
	});
});

test("where nothing is recorded each question has a sentence, and no picture", () => {
	const read = readWorkbook(smallUnit());
	const days = ["2027-02-01", "2027-02-02"];
	for (const picture of [
		dailyPicture(read, "births", days),
		dailyPicture(read, "kits_used", days),
		needsOfDays(read, days),
		itemsOfDays(read, days),
		failedOfDays(read, days),
	]) {
		expect(picture.words).toMatch(/^Nothing is recorded of/);
		expect(picture.draw).toBeUndefined();
		expect(picture.table).toBeUndefined();
	}
});

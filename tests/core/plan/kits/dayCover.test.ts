import { describe, expect, test } from "vitest";
import { plan } from "../../../../src/core/plan/plan.ts";
import { expectWithin } from "../../../expectWithin.ts";
import { columnOf, contentOf } from "../../contentOf.ts";
import { codesOf, numberIn, rowsOf } from "../../planCells.ts";
import { smallUnit, unitWith } from "../../smallUnit.ts";

const FILE = "day-cover.csv";
/** Rounds of one length and kits that keep: what can be written down. */
const plain = {
	"steps.csv": "step,basis,minutes,hands_on\nall of it,round,110,yes\nsoak,load,0,no",
};
const keeps = (changes: Record<string, string> = {}) =>
	plan(unitWith({ ready_life_days: 90 }, { ...plain, ...changes }));
const rows = rowsOf(keeps(), FILE);

describe("three kits, 0.6 uses a day, rounds at 7, 14 and 21 h of 110 minutes", () => {
	/** Hours of uses out of reach at half past the hour. */
	test.each([
		[0, 3.5],
		[7, 10.5],
		[8, 11.5],
		[9, 2.5],
		[15, 8.5],
		[16, 2.5],
		[22, 8.5],
		[23, 2.5],
	])("at %d:30 those used in the last %d hours", (hour, since) => {
		const m = (0.6 * since) / 24;
		const [p0, p1, p2] = [Math.exp(-m), m * Math.exp(-m), (m * m * Math.exp(-m)) / 2];
		expectWithin(numberIn(rows[hour], "ready_expected"), 3 * p0 + 2 * p1 + p2, 1e-12, "kits");
		expectWithin(
			numberIn(rows[hour], "none_ready_per_1000"),
			1000 * (1 - p0 - p1 - p2),
			1e-9,
			"per 1,000",
		);
	});

	test("all hours, once", () => {
		expect(columnOf(plan(smallUnit()), FILE, "hour")).toEqual(
			Array.from({ length: 24 }, (_, h) => h),
		);
	});
});

test("the day with most births is the one that is shown", () => {
	const busy = (date: string) =>
		contentOf(
			keeps({ "births.csv": `date,births,note\n${date},20,` }),
			FILE,
			"none_ready_per_1000",
		);
	// At 12:30 those used since seven: 2 uses a day from 20 births.
	const m = (2 * 5.5) / 24;
	const none = 1000 * (1 - Math.exp(-m) * (1 + m + (m * m) / 2));
	for (const date of ["2027-03-01", "2027-03-04", "2027-03-07"])
		expectWithin(Number(busy(date)[12]), none, 1e-9, "per 1,000");
	// A day outside the plan is not in it.
	expect(busy("2027-03-08")[12]).toEqual([numberIn(rows[12], "none_ready_per_1000")]);
});

test("without kits in service every need finds none", () => {
	const none = rowsOf(plan(smallUnit({ "kits.csv": "kit,kind,status,ready_since,note" })), FILE);
	expect(new Set(none.map((row) => numberIn(row, "none_ready_per_1000")))).toEqual(new Set([1000]));
});

test("rounds that do not fit leave the hours without an answer", () => {
	const tight = rowsOf(plan(smallUnit({ "rounds.csv": "start,label\n07:00,\n07:30," })), FILE);
	expect(codesOf(tight[0]?.ready_expected)).toEqual(["round-too-long"]);
});

test("after each use the hours differ as births do", () => {
	const hour = (n: number) => `${n},${n < 7 ? 2 : 1}`;
	const hours = Array.from({ length: 24 }, (_, n) => hour(n)).join("\n");
	const ready = (changes: Record<string, string>) =>
		columnOf(
			plan(unitWith({ reprocessing: "after_each_use", ready_life_days: 90 }, changes)),
			FILE,
			"ready_expected",
		);
	const alike = ready({}).map((kits) => Number(kits).toFixed(9));
	expect(new Set(alike).size).toBe(1);
	const night = ready({ "hours.csv": `hour,share\n${hours}` });
	expect(Number(night[4])).toBeLessThan(Number(night[15]));
});

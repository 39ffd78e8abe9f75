import { expect, test } from "vitest";
import { plan } from "../../src/core/plan/plan.ts";
import { anyWorkbook } from "./anyWorkbook.ts";
import { differ } from "./differ.ts";
import { saidBy } from "./saidBy.ts";
import { timeOf } from "./times.ts";

test("plans are the same by another clock, in another language, with rows in another order", () => {
	expect(differ(3, 1)).toEqual([]);
}, 120_000);

test.each([9, 14, 42, 45, 79, 105, 269, 280, 335])(
	"of workbook %d, found by trying very many, the order of rows decides nothing",
	(number) => {
		expect(saidBy(number, "mixed")).toEqual(saidBy(number, "made"));
	},
	60_000,
);

test("some of the invented workbooks make a whole plan, others do not", () => {
	const made = Array.from({ length: 8 }, (_, i) => plan(anyWorkbook(i + 1)).made);
	expect(new Set(made)).toEqual(new Set([true, false]));
}, 60_000);

test("the time of a workbook is that of all its parts, the longest of them among it", () => {
	const { number, ms, longest, longestMs } = timeOf(1);
	expect(number).toBe(1);
	expect(longest).not.toBe("");
	expect(longestMs).toBeGreaterThan(0);
	expect(ms).toBeGreaterThan(longestMs);
}, 60_000);

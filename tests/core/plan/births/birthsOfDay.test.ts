import { describe, expect, test } from "vitest";
import type { Figure } from "../../../../src/core/calculation.ts";
import { kitUses } from "../../../../src/core/kits/kitUses.ts";
import { problemsOf } from "../../../../src/core/outcome.ts";
import { birthsOfDay } from "../../../../src/core/plan/births/birthsOfDay.ts";
import { readTable } from "../../../../src/core/read/readTable.ts";
import { birthsSheet } from "../../../../src/core/sheets/births.ts";
import { expectWithin } from "../../../expectWithin.ts";
import { answerOf, figure, missing, refusalOf } from "../../answerOf.ts";
import { tableOf } from "../../smallUnit.ts";

const table = readTable(
	birthsSheet,
	tableOf(`date,births,note
		2027-03-01,9,
		2027-03-02,,holiday
		2027-03-03,two,
		2027-03-04,3,
		2027-03-04,4,
		someday,5,
		2027-03-05,0,`),
);

/** Births of a day of a unit without a register. */
const mean = (date: string, perDay: Figure<number>) =>
	birthsOfDay(date, table, undefined, perDay).mean;

describe("births of a day", () => {
	test.each([
		["the day's own figure", "2027-03-01", 9],
		["a blank takes births a day", "2027-03-02", 6],
		["a day that is not listed takes them too", "2027-03-06", 6],
		["none expected is a figure", "2027-03-05", 0],
	])("%s", (_what, date, births) => {
		expect(mean(date, figure(6)).outcome).toEqual({ ok: true, value: births });
	});

	test.each([
		["a figure nobody can read", "2027-03-03", ["bad-cell"]],
		["a day that is listed twice", "2027-03-04", ["doubled-row", "doubled-row"]],
	])("%s leaves the day without births", (_what, date, codes) => {
		expect(problemsOf(mean(date, figure(6)).outcome).map((p) => p.code)).toEqual(codes);
	});

	test("without births a day, only listed days have births", () => {
		expect(mean("2027-03-01", missing("not-given")).outcome.ok).toBe(true);
		expect(mean("2027-03-02", missing("not-given")).outcome.ok).toBe(false);
	});

	test("a figure knows its line", () => {
		expect(mean("2027-03-01", figure(6)).origin).toEqual({
			kind: "typed",
			place: { file: "births.csv", line: 2, column: "births" },
		});
	});
});

describe("kit uses", () => {
	test.each([
		[6, 10, 0.6],
		[10, 4.4, 0.44],
		[10, 100, 10],
		[0, 10, 0],
		[10, 0, 0],
	])("%d births, %d of 100: %d", (births, kitsPer100Births, uses) => {
		expectWithin(answerOf(kitUses, { births, kitsPer100Births }), uses, 1e-12, "kits");
	});

	test.each([
		[-1, 10],
		[6, 101],
		[6, -1],
	])("%d births, %d of 100 lie outside the limits", (births, kitsPer100Births) => {
		expect(refusalOf(kitUses, { births, kitsPer100Births }).map((p) => p.code)).toEqual([
			"outside-limits",
		]);
	});
});

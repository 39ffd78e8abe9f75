import { describe, expect, test } from "vitest";
import { type Figure, refusedFigure, typedFigure } from "../../src/core/calculation.ts";
import type { AnyTable } from "../../src/core/computedTable.ts";
import { nowhere, problem } from "../../src/core/problem.ts";
import { weekTotalSheet } from "../../src/core/sheets/weekTotal.ts";
import { computedCsv, problemsCsv } from "../../src/io/computedCsv.ts";
import { readCsv } from "../../src/io/readCsv.ts";

const figure = <T>(value: T): Figure<T> => typedFigure("", "", value, nowhere);
const wrong = problem(
	{ file: "births.csv", line: 3, column: "births" },
	{ code: "bad-cell", received: "=1+1", allowed: "a number", message: 'Births: "=1+1" was found.' },
);
const noFigure = refusedFigure("", "", nowhere, wrong);

const tableOf = (expected: Figure<number>): AnyTable => ({
	sheet: weekTotalSheet,
	rows: [{ measure_of: figure("births"), expected, set_aside: figure(8), unit: figure("births") }],
});

describe("computed sheets", () => {
	test.each([
		[2 / 3, "0.666667"],
		[1234567.25, "1234567.25"],
		[0.1 + 0.2, "0.3"],
		[8, "8"],
		[0, "0"],
		[1e-9, "0.000000001"],
		[1e15, "1000000000000000"],
	])("%d is written %s", (value, written) => {
		expect(computedCsv(tableOf(figure(value)))).toBe(
			`measure_of,expected,set_aside,unit\r\nbirths,${written},8,births\r\n`,
		);
	});

	test("a figure without an answer is blank, and so is one that is not there", () => {
		expect(computedCsv(tableOf(noFigure))).toContain("births,,8,births");
		const bare = { sheet: weekTotalSheet, rows: [{ measure_of: figure("births") }] };
		expect(computedCsv(bare)).toContain("births,,,\r\n");
	});
});

describe("problems.csv", () => {
	test("none: only the header", () => {
		expect(problemsCsv([])).toBe("code,file,line,column,received,allowed,message,weight\r\n");
	});

	test("hostile text is written so that it is text, and reads back", () => {
		const csv = problemsCsv([wrong, { ...wrong, line: null, file: "" }]);
		expect(csv).toContain("bad-cell,births.csv,3,births,'=1+1,a number,");
		expect(readCsv("problems.csv", csv).table.rows).toEqual([
			["bad-cell", "births.csv", "3", "births", "=1+1", "a number", wrong.message, "error"],
			["bad-cell", "", "", "births", "=1+1", "a number", wrong.message, "error"],
		]);
	});

	test("very long text is cut, and says how long it was", () => {
		const [, , , , received] =
			readCsv("", problemsCsv([{ ...wrong, received: "x".repeat(9_000_000) }])).table.rows[0] ?? [];
		expect(received).toMatch(/^x{100,}… \(9000000 characters in all\)$/);
		expect(received?.length).toBe(2000);
	});
});

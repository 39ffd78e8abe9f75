import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Figure } from "../../src/core/calculation.ts";
import type { Columns } from "../../src/core/column.ts";
import { problemsOf } from "../../src/core/outcome.ts";
import { type Plan, plan } from "../../src/core/plan/plan.ts";
import { problemKey } from "../../src/core/problem.ts";
import type { Workbook } from "../../src/core/workbook.ts";
import { expectEqual } from "../expectEqual.ts";
import { always, spoiltWorkbook, strangeWorkbook, validWorkbook } from "./workbooks.ts";

/** What a plan says, without where it comes from: values, or the codes of the problems for which there is none. */
function said(made: Plan) {
	const tables = Object.entries(made.tables).map(([file, { rows }]) => [
		file,
		rows.map((row) =>
			Object.entries(row).map(([column, { outcome }]) => [
				column,
				outcome.ok ? outcome.value : outcome.problems.map((p) => p.code),
			]),
		),
	]);
	return { tables, problems: made.problems, made: made.made };
}

/** What is wrong with a cell, if anything: gathered, because to expect each of millions took most of the time. */
function faultOf(
	{ outcome }: Figure<unknown>,
	{ value: kind }: Columns[string],
): string | undefined {
	if (!outcome.ok) return outcome.problems.length > 0 ? undefined : "no value and no reason";
	const { value } = outcome;
	if (typeof value === "number")
		return Number.isFinite(value) && value >= 0 ? undefined : `is ${value}`;
	return kind.schema.safeParse(kind.write(value)).data === value ? undefined : `is ${value}`;
}

function expectWhole(workbook: Workbook): void {
	const made = plan(workbook);
	const faults: string[] = [];
	for (const [file, { rows, sheet }] of Object.entries(made.tables)) {
		const columns = Object.keys(sheet.columns).sort().join();
		for (const row of rows) {
			if (Object.keys(row).sort().join() !== columns) faults.push(`${file}: other columns`);
			for (const [column, cell] of Object.entries(row)) {
				const fault = faultOf(cell, sheet.columns[column] as Columns[string]);
				if (fault) faults.push(`${file} ${column}: ${fault}`);
			}
		}
	}
	const listed = new Set(made.problems.map(problemKey));
	// Days that are like others are not looked at for problems: none may be missed by it.
	for (const row of made.tables["day-plan.csv"]?.rows ?? [])
		for (const [column, { outcome }] of Object.entries(row))
			for (const problem of problemsOf(outcome))
				if (!listed.has(problemKey(problem))) faults.push(`day-plan.csv ${column}: not listed`);
	for (const { message, code } of made.problems) {
		const words = `${code}: ${message.replace(/"[^"]*"/g, "")}`;
		if (message.trim() === "" || /\bundefined\b|\[object|Infinity|NaN/.test(words))
			faults.push(words);
	}
	expect(faults).toEqual([]);
	if (!made.made) expect(made.problems.some((p) => p.weight === "error")).toBe(true);
}

function frozen<T>(value: T): T {
	if (typeof value === "object" && value !== null && !Object.isFrozen(value)) {
		Object.freeze(value);
		for (const part of Object.values(value)) frozen(part);
	}
	return value;
}

describe("every number of a plan is a number of nought or more, or has a reason why it is none", () => {
	test("whatever a unit's settings", () => {
		fc.assert(fc.property(validWorkbook, expectWhole), always(100));
	}, 60_000);

	test("whatever is typed into cells", () => {
		fc.assert(fc.property(spoiltWorkbook, expectWhole), always(150));
	}, 60_000);

	test("whatever the tables", () => {
		fc.assert(fc.property(strangeWorkbook, expectWhole), always(100));
	}, 60_000);
});

describe("a plan is a function of its workbook", () => {
	test("the same workbook gives the same plan, and is left as it was", () => {
		fc.assert(
			fc.property(fc.oneof(validWorkbook, spoiltWorkbook), (workbook) => {
				const before = structuredClone(workbook);
				const once = said(plan(frozen(workbook)));
				expectEqual(said(plan(structuredClone(workbook))), once);
				expectEqual(said(plan(workbook)), once);
				expect(workbook).toEqual(before);
			}),
			always(25),
		);
	}, 60_000);
});

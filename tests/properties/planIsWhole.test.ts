import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Columns } from "../../src/core/column.ts";
import { type Plan, plan } from "../../src/core/plan/plan.ts";
import type { Workbook } from "../../src/core/workbook.ts";
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

function expectWhole(workbook: Workbook): void {
	const made = plan(workbook);
	for (const [file, { rows, sheet }] of Object.entries(made.tables))
		for (const row of rows) {
			expect(Object.keys(row).sort(), file).toEqual(Object.keys(sheet.columns).sort());
			for (const [column, { outcome }] of Object.entries(row)) {
				if (!outcome.ok) expect(outcome.problems.length, `${file} ${column}`).toBeGreaterThan(0);
				else if (typeof outcome.value === "number") {
					const sound = Number.isFinite(outcome.value) && outcome.value >= 0;
					expect(sound, `${file} ${column} is ${outcome.value}`).toBe(true);
				} else {
					const { write, schema } = (sheet.columns[column] as Columns[string]).value;
					const read = schema.safeParse(write(outcome.value));
					expect(read.data, `${file} ${column}`).toBe(outcome.value);
				}
			}
		}
	for (const { message, code } of made.problems) {
		expect(message.trim()).not.toBe("");
		expect(`${code}: ${message.replace(/"[^"]*"/g, "")}`).not.toMatch(/\bundefined\b|\[object/);
	}
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
				expect(said(plan(structuredClone(workbook)))).toEqual(once);
				expect(said(plan(workbook))).toEqual(once);
				expect(workbook).toEqual(before);
			}),
			always(25),
		);
	}, 60_000);
});

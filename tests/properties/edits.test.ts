import fc from "fast-check";
import { describe, expect, test, vi } from "vitest";
import type { Figure } from "../../src/core/calculation.ts";
import { withTexts } from "../../src/core/edit/withTexts.ts";
import { type Plan, plan } from "../../src/core/plan/plan.ts";
import type { Workbook } from "../../src/core/workbook.ts";
import { unitWith } from "../core/smallUnit.ts";
import { always, cellText } from "./workbooks.ts";

/**
 * What a plan works out it partly remembers, so that an edit costs little. No memory may
 * show: after any edits the plan must be the one that a program just started makes.
 */

/** Where figures come from in the end: every text, default and name they follow from. */
function rootsOf(figures: readonly Figure<unknown>[]): string[] {
	const asked = new Set<Figure<unknown>>();
	const roots = new Set<string>();
	const ask = (one: Figure<unknown>) => {
		if (asked.has(one)) return;
		asked.add(one);
		const { origin, label } = one;
		if (origin.kind === "computed") Object.values(origin.inputs).forEach(ask);
		else roots.add(JSON.stringify([label, origin, one.outcome]));
	};
	figures.forEach(ask);
	return [...roots].sort();
}

/** All that a plan says: every cell of every table, why the days are so, every problem. */
function everythingOf({ tables, problems, made }: Plan) {
	return {
		tables: Object.entries(tables).map(([file, { rows }]) => [
			file,
			rows.map((row) => Object.entries(row).map(([column, { outcome }]) => [column, outcome])),
		]),
		why: tables["day-plan.csv"]?.rows.map((row) => rootsOf(Object.values(row))),
		problems,
		made,
	};
}

/** As text first: comparing object by object takes much longer, and is only needed to show a difference. */
function expectSame(one: Plan, other: Plan): void {
	const [a, b] = [everythingOf(one), everythingOf(other)];
	if (JSON.stringify(a) !== JSON.stringify(b)) expect(a).toEqual(b);
}

async function planOfNewProgram(workbook: Workbook): Promise<Plan> {
	vi.resetModules();
	const program = await import("../../src/core/plan/plan.ts");
	return program.plan(workbook);
}

const DAYS = 9;
/** More rows than a plan has days, so that only those touched are read again. */
const ROWS = 60;
const births = Array.from({ length: ROWS }, (_, day) => {
	const date = new Date(Date.UTC(2027, 2, 1 + day)).toISOString().slice(0, 10);
	return `${date},${day % 4 === 3 ? "" : 4 + (day % 7)},`;
});
const start = unitWith(
	{ plan_days: DAYS },
	{
		"births.csv": ["date,births,note", ...births].join("\n"),
		// Known by the register of kits: an edit there changes what these say, and leaves them as they are.
		"uses.csv": "at,kit,what,by,note,id\n2027-02-27 10:00,a,used,,,\n2027-02-28 10:00,b,used,,,",
	},
);

const row = (most: number) => fc.integer({ min: 0, max: most });
const amount = fc.constantFrom("0", "1", "2.5", "4", "7", "");
const edit = fc.oneof(
	{
		weight: 4,
		arbitrary: fc.tuple(fc.constant("births.csv"), row(DAYS), fc.constant("births"), amount),
	},
	...Object.entries(start.tables).map(([file, { header, rows }]) => ({
		weight: 1,
		arbitrary: fc.tuple(
			fc.constant(file),
			row(rows.length),
			fc.constantFrom(...header),
			fc.oneof(amount, fc.constantFrom("yes", "no", "kit", "08:00", "2027-03-04", "1,5"), cellText),
		),
	})),
	{
		weight: 3,
		arbitrary: fc
			.constantFrom(
				["plan_confidence", "0.8"],
				["births_per_day", "3"],
				["workers_per_round", "3"],
				["reprocessing", "after_each_use"],
				["solution_made", "each_day"],
				["descale_every_rounds", "2"],
				["soak_capacity_kits", "1"],
				["target_strength_pct", "0.1"],
				["plan_start", "2027-03-02"],
			)
			.map(([key, value]) => ["unit.csv", -1, key, value] as [string, number, string, string]),
	},
);
type Step = "undo" | [file: string, row: number, column: string, text: string];
const steps: fc.Arbitrary<Step[]> = fc.array(
	fc.oneof({ weight: 5, arbitrary: edit }, fc.constant("undo" as const)),
	{
		minLength: 2,
		maxLength: 8,
	},
);

/** An edit as the page makes it: unit.csv by its key, in a new row where there is none. */
function edited(workbook: Workbook, [file, at, column, text]: [string, number, string, string]) {
	if (at >= 0) return withTexts(workbook, file, [{ row: at, column, text }]);
	const rows = workbook.tables[file]?.rows ?? [];
	const known = rows.findIndex(([key]) => key === column);
	const place = known < 0 ? rows.length : known;
	return withTexts(workbook, file, [
		{ row: place, column: "key", text: column },
		{ row: place, column: "value", text },
	]);
}

/** The workbooks of a row of edits, one after the other. */
function workbooksOf(all: readonly Step[]): Workbook[] {
	const past = [start];
	return all.map((step) => {
		if (step !== "undo") past.push(edited(past.at(-1) as Workbook, step));
		else if (past.length > 1) past.pop();
		return past.at(-1) as Workbook;
	});
}

describe("no edit leaves a trace of what was before", () => {
	test("every plan of a row of edits is that of the same texts in new tables", () => {
		fc.assert(
			fc.property(steps, (all) => {
				plan(start);
				for (const workbook of workbooksOf(all))
					expectSame(plan(workbook), plan(structuredClone(workbook)));
			}),
			always(25),
		);
	}, 120_000);

	test("and that of a program that was just started", async () => {
		await fc.assert(
			fc.asyncProperty(steps, async (all) => {
				const plans = workbooksOf(all).map((workbook) => plan(workbook));
				const last = workbooksOf(all).at(-1) as Workbook;
				expectSame(plans.at(-1) as Plan, await planOfNewProgram(last));
			}),
			always(4),
		);
	}, 120_000);
});

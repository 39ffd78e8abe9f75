import type { Calculation, Figure } from "../../src/core/calculation.ts";
import type { AnyRow } from "../../src/core/computedTable.ts";
import { problemsOf } from "../../src/core/outcome.ts";
import type { Plan } from "../../src/core/plan/plan.ts";
import type { Measure } from "../../src/core/sheets/planMeasures.ts";
import { wholeProblems } from "./wholeProblems.ts";

export function rowsOf(plan: Plan, file: string): readonly AnyRow[] {
	return plan.tables[file]?.rows ?? [];
}

/** The value of a cell; undefined where it has none. */
export function valueIn(figure: Figure<unknown> | undefined): unknown {
	return figure?.outcome.ok ? figure.outcome.value : undefined;
}

export function numberIn(row: AnyRow | undefined, column: string): number | undefined {
	const value = valueIn(row?.[column]);
	return typeof value === "number" ? value : undefined;
}

/** Row of week-total.csv for one measure. */
export function totalOf(plan: Plan, measure: Measure): AnyRow {
	const row = rowsOf(plan, "week-total.csv").find((r) => valueIn(r.measure_of) === measure);
	if (!row) throw new Error(`no total of ${measure}`);
	return row;
}

/** Columns of the first row of a sheet that wait for something. */
export function waiting(plan: Plan, file: string): string[] {
	return Object.entries(rowsOf(plan, file)[0] ?? {}).flatMap(([column, { outcome }]) =>
		outcome.ok ? [] : [column],
	);
}

/** Codes of the problems for which a cell waits, each once. */
export function codesOf(figure: Figure<unknown> | undefined): string[] {
	return figure ? [...new Set(problemsOf(figure.outcome).map((p) => p.code))] : [];
}

export function problemCodes(plan: Plan, weight?: "error" | "advice"): string[] {
	return wholeProblems(plan.problems)
		.filter((p) => !weight || p.weight === weight)
		.map((p) => p.code);
}

/** Every calculation that a figure comes from, however far back. */
export function calculationsBehind(
	figure: Figure<unknown>,
	found: Set<Calculation> = new Set(),
	seen = new Set<Figure<unknown>>(),
): Set<Calculation> {
	if (seen.has(figure) || figure.origin.kind !== "computed") return found;
	seen.add(figure);
	found.add(figure.origin.calculation);
	for (const input of Object.values(figure.origin.inputs)) calculationsBehind(input, found, seen);
	return found;
}

import type { Figure } from "../../../src/core/calculation.ts";
import type { Counts } from "../../../src/core/counts/counts.ts";
import type { Plan } from "../../../src/core/plan/plan.ts";

/** What a plan says to set aside, and how often it says that this is enough. */
export interface Stated {
	readonly aside: number;
	readonly chance: number;
}

type Cell = Figure<unknown> | undefined;

/** A number in a cell; a plan without it is no plan to test. */
export function numberIn(cell: Cell): number {
	if (!cell?.outcome.ok || typeof cell.outcome.value !== "number")
		throw new Error(`no number: ${JSON.stringify(cell?.outcome)}`);
	return cell.outcome.value;
}

/** The row of a measure over the whole plan. */
export function totalRow(plan: Plan, measure: string) {
	const row = plan.tables["week-total.csv"]?.rows.find((each) => {
		const of = (each as Record<string, Cell>).measure_of;
		return of?.outcome.ok && of.outcome.value === measure;
	});
	if (!row) throw new Error(`no row for ${measure}`);
	return row as Record<string, Cell>;
}

/** What is set aside in a cell, with the chance that the plan's own distribution gives it. */
export function statedIn(cell: Cell, nominal: number): Stated {
	const counts = countsBehind(cell);
	const aside = numberIn(cell);
	if (!counts) return { aside, chance: nominal };
	let chance = 0;
	counts.chance.forEach((p, i) => {
		if (counts.first + i <= aside) chance += p;
	});
	return { aside, chance };
}

/** The distribution that a set-aside number was read from. */
function countsBehind(cell: Cell): Counts | undefined {
	if (cell?.origin.kind !== "computed") return undefined;
	const { counts } = cell.origin.inputs as Record<string, Cell>;
	return counts?.outcome.ok ? (counts.outcome.value as Counts) : undefined;
}

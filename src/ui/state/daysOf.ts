import { rowsOf } from "../../core/plan/rowsOf.ts";
import { dayPlanSheet } from "../../core/sheets/dayPlan.ts";
import { wordIn } from "./numberIn.ts";
import type { State } from "./store.ts";

/** The days of the plan, as dates. Empty where the plan has no days yet. */
export function daysOf(state: State): string[] {
	return rowsOf(state.plan, dayPlanSheet).map((row) => wordIn(row.date));
}

import type { ComputedRow } from "../../core/computedTable.ts";
import type { State } from "./store.ts";

/** Rows of a sheet that the plan fills in; none where there is no plan yet. */
export function rowsOf(state: State, file: string): readonly ComputedRow[] {
	return state.plan.tables[file]?.rows ?? [];
}

/** The number in a cell; undefined where it has none. */
export function numberIn(row: ComputedRow | undefined, key: string): number | undefined {
	const outcome = row?.[key]?.outcome;
	return outcome?.ok && typeof outcome.value === "number" ? outcome.value : undefined;
}

/** The text in a cell; "" where it has none. */
export function wordIn(row: ComputedRow | undefined, key: string): string {
	const outcome = row?.[key]?.outcome;
	return outcome?.ok ? String(outcome.value ?? "") : "";
}

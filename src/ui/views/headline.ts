import type { ComputedRow } from "../../core/computedTable.ts";
import { dayPlanSheet } from "../../core/sheets/dayPlan.ts";
import { kitCoverSheet } from "../../core/sheets/kitCover.ts";
import { mixingSheet } from "../../core/sheets/mixing.ts";
import { THIS_WEEK } from "../book/questions.ts";
import { titleOf } from "../book/sheetOf.ts";
import type { State } from "../book/store.ts";
import { shownNumber, shownPlain } from "../shown/shownNumber.ts";
import { daysOf } from "./weekGrid.ts";

/** What stands over a sheet: the answer where the sheet gives one, else its name. */
export function headline(state: State, file: string): string {
	if (file === THIS_WEEK) return weekHeadline(state);
	if (file === kitCoverSheet.file) return coverHeadline(state);
	if (file === mixingSheet.file) return mixingHeadline(state);
	return titleOf(file);
}

export function numberIn(row: ComputedRow | undefined, key: string): number | undefined {
	const outcome = row?.[key]?.outcome;
	return outcome?.ok && typeof outcome.value === "number" ? outcome.value : undefined;
}

function wordIn(row: ComputedRow | undefined, key: string): string {
	const outcome = row?.[key]?.outcome;
	return outcome?.ok ? String(outcome.value ?? "") : "";
}

function rowsOf(state: State, file: string): readonly ComputedRow[] {
	return state.plan.tables[file]?.rows ?? [];
}

function weekHeadline(state: State): string {
	const period = daysOf(state).length === 7 ? "This week" : "This plan";
	const error = state.plan.problems.find((problem) => problem.weight === "error");
	const first = rowsOf(state, dayPlanSheet.file)[0];
	const needed = numberIn(first, "kits_needed");
	const owned = numberIn(first, "kits_in_service");
	if (!state.plan.made && error) return `${period} waits for one thing: ${error.message}`;
	if (needed === undefined || owned === undefined) return `${period} waits for its numbers`;
	return owned >= needed
		? `${kits(needed)} ${needed === 1 ? "is" : "are"} enough; this unit has ${owned} in service`
		: `${kits(needed)} ${needed === 1 ? "is" : "are"} needed; this unit has only ${owned} in service`;
}

/** The row of the cover table that is the first to be enough. */
export function firstEnough(state: State): ComputedRow | undefined {
	return rowsOf(state, kitCoverSheet.file).find((row) => wordIn(row, "enough") === "yes");
}

function coverHeadline(state: State): string {
	const needed = numberIn(firstEnough(state), "kits");
	if (needed === undefined) return titleOf(kitCoverSheet.file);
	return needed > 1 ? `${kits(needed)} are enough; ${needed - 1} ${needed === 2 ? "is" : "are"} not` : "1 kit is enough";
}

function mixingHeadline(state: State): string {
	const row = rowsOf(state, mixingSheet.file).find((r) => numberIn(r, "product_quantity") !== undefined);
	const quantity = numberIn(row, "product_quantity");
	const water = numberIn(row, "water_litres");
	const litres = numberIn(row, "litres");
	if (quantity === undefined || water === undefined || litres === undefined)
		return titleOf(mixingSheet.file);
	return `${shownNumber(water, 2)} L of water, then ${shownPlain(quantity)} ${wordIn(row, "product_measure")} of ${wordIn(row, "product")}: ${shownNumber(litres, 1)} L`;
}

function kits(count: number): string {
	return count === 1 ? "1 kit" : `${count} kits`;
}

import type { ComputedRow } from "../../../core/computedTable.ts";
import {
	BIRTHS_A_DAY,
	MOVED_BY_REGISTER,
	OWN_FIGURE,
} from "../../../core/plan/births/forecastTable.ts";
import { rowsOf } from "../../../core/plan/rowsOf.ts";
import { forecastSheet } from "../../../core/sheets/forecast.ts";
import { numberIn, wordIn } from "../../state/numberIn.ts";
import type { State } from "../../state/store.ts";

/** Births of one day of the plan: the mean and how far the day may well be from it. */
export interface DayToCome {
	readonly date: string;
	readonly expected: number;
	readonly low50: number;
	readonly high50: number;
	readonly low90: number;
	readonly high90: number;
	/** Where the mean is from. */
	readonly source: "own" | "register" | "moved" | "setting";
}

/** Days of the plan that have a figure; a day that waits for something is left out. */
export function daysToCome(state: State): DayToCome[] {
	return rowsOf(state.plan, forecastSheet).flatMap((row) => dayOf(row));
}

function dayOf(row: ComputedRow<typeof forecastSheet>): DayToCome[] {
	const expected = numberIn(row.births_expected);
	const low50 = numberIn(row.low_50);
	const high50 = numberIn(row.high_50);
	const low90 = numberIn(row.low_90);
	const high90 = numberIn(row.high_90);
	if (
		expected === undefined ||
		low50 === undefined ||
		high50 === undefined ||
		low90 === undefined ||
		high90 === undefined
	)
		return [];
	return [
		{ date: wordIn(row.date), expected, low50, high50, low90, high90, source: sourceOf(row) },
	];
}

function sourceOf(row: ComputedRow<typeof forecastSheet>): DayToCome["source"] {
	const words = wordIn(row.taken_from);
	if (words === OWN_FIGURE) return "own";
	if (words === MOVED_BY_REGISTER) return "moved";
	return words === BIRTHS_A_DAY ? "setting" : "register";
}

import type { ComputedRow } from "../../core/computedTable.ts";
import type { Problem } from "../../core/problem.ts";
import { say } from "../../core/say.ts";
import { dayPlanSheet } from "../../core/sheets/dayPlan.ts";
import { kitCoverSheet } from "../../core/sheets/kitCover.ts";
import { mixingSheet } from "../../core/sheets/mixing.ts";
import { THIS_WEEK } from "../book/pageTitles.ts";
import { titleOf } from "../book/sheetOf.ts";
import type { State } from "../book/store.ts";
import { mixHeadlines } from "../mixing/mixHeadlines.ts";
import { shownNumber, shownPlain } from "../shown/shownNumber.ts";
import { comingHeadlines } from "./comingHeadlines.ts";
import { numberIn, rowsOf, wordIn } from "./planRows.ts";
import { readyHeadlines } from "./readyHeadlines.ts";
import { supplyHeadlines } from "./supplyHeadlines.ts";
import { daysOf } from "./weekGrid.ts";

/** What stands over a sheet: the answer where the sheet gives one, else its name. */
export function headline(state: State, file: string): string {
	if (file === THIS_WEEK) return weekHeadline(state);
	if (file === kitCoverSheet.file) return coverHeadline(state);
	if (file === mixingSheet.file) return mixingHeadline(state);
	return (
		comingHeadlines[file]?.(state) ??
		supplyHeadlines[file]?.(state) ??
		mixHeadlines[file]?.(state) ??
		readyHeadlines[file]?.(state) ??
		titleOf(file)
	);
}

function weekHeadline(state: State): string {
	const period = daysOf(state).length === 7 ? say`This week` : say`This plan`;
	const errors = state.plan.problems.filter((problem) => problem.weight === "error");
	const first = rowsOf(state, dayPlanSheet.file)[0];
	const needed = numberIn(first, "kits_needed");
	const owned = numberIn(first, "kits_in_service");
	if (!state.plan.made && errors[0]) return waitingHeadline(period, errors[0], errors.length);
	if (needed === undefined || owned === undefined) return say`${period} waits for its numbers`;
	return owned >= needed
		? say`${kits(needed)} ${needed === 1 ? "is" : "are"} enough; this unit has ${owned} in service`
		: say`${kits(needed)} ${needed === 1 ? "is" : "are"} needed; this unit has only ${owned} in service`;
}

/** The first problem by its first words; the list under the plan has every one in full. */
function waitingHeadline(period: string, { message }: Problem, count: number): string {
	const [first = message] = message.split("; ");
	const things = count === 1 ? say`one thing` : say`${count} things, first`;
	return say`${period} waits for ${things}: ${first}`;
}

/** For each kind of kit, the row of the cover table that is the first to be enough. */
export function enoughRows(state: State): ComputedRow[] {
	const enough = rowsOf(state, kitCoverSheet.file).filter((row) => wordIn(row, "enough") === "yes");
	return enough.filter(
		(row, at) => at === 0 || wordIn(row, "kind") !== wordIn(enough[at - 1], "kind"),
	);
}

function coverHeadline(state: State): string {
	const rows = enoughRows(state);
	if (rows.length === 0) return titleOf(kitCoverSheet.file);
	return rows.map((row) => enoughWords(row, rows.length > 1)).join("; ");
}

function enoughWords(row: ComputedRow, named: boolean): string {
	const needed = numberIn(row, "kits") ?? 0;
	if (named) return `${wordIn(row, "kind")}: ${needed}`;
	const fewer = needed - 1;
	if (fewer === 0) return say`1 kit is enough`;
	return say`${kits(needed)} are enough; ${fewer} ${fewer === 1 ? "is" : "are"} not`;
}

function mixingHeadline(state: State): string {
	const row = rowsOf(state, mixingSheet.file).find(
		(r) => numberIn(r, "product_quantity") !== undefined,
	);
	const quantity = numberIn(row, "product_quantity");
	const water = numberIn(row, "water_litres");
	const litres = numberIn(row, "litres");
	if (quantity === undefined || water === undefined || litres === undefined)
		return titleOf(mixingSheet.file);
	return say`${shownNumber(water, 2)} L of water, then ${shownPlain(quantity)} ${wordIn(row, "product_measure")} of ${wordIn(row, "product")}: ${shownNumber(litres, 1)} L`;
}

function kits(count: number): string {
	return count === 1 ? say`1 kit` : say`${count} kits`;
}

import type { ComputedRow } from "../../core/computedTable.ts";
import { rowsOf } from "../../core/plan/rowsOf.ts";
import type { Problem } from "../../core/problem.ts";
import { say } from "../../core/say.ts";
import { dayPlanSheet } from "../../core/sheets/dayPlan.ts";
import { kitCoverSheet } from "../../core/sheets/kitCover.ts";
import { mixingSheet } from "../../core/sheets/mixing.ts";
import { amountOf } from "../format/amountOf.ts";
import { EXACT } from "../format/litreWords.ts";
import { semicolon } from "../format/semicolon.ts";
import { shownNumber } from "../format/shownNumber.ts";
import { THIS_WEEK } from "../shell/pageTitles.ts";
import { titleOf } from "../shell/titleOf.ts";
import { numberIn, wordIn } from "../state/numberIn.ts";
import type { State } from "../state/store.ts";
import { comingHeadlines } from "../subjects/births/comingHeadlines.ts";
import { readyHeadlines } from "../subjects/kits/readyHeadlines.ts";
import { mixHeadlines } from "../subjects/mixing/mixHeadlines.ts";
import { supplyHeadlines } from "../subjects/order/supplyHeadlines.ts";
import { daysOf } from "../subjects/week/weekGrid.ts";

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
	const isWeek = daysOf(state).length === 7;
	const errors = state.plan.problems.filter((problem) => problem.weight === "error");
	const first = rowsOf(state.plan, dayPlanSheet)[0];
	const needed = numberIn(first?.kits_needed);
	const owned = numberIn(first?.kits_in_service);
	if (!state.plan.made && errors[0]) return waitingHeadline(isWeek, errors[0], errors.length);
	if (needed === undefined || owned === undefined)
		return isWeek ? say`This week waits for its numbers` : say`This plan waits for its numbers`;
	if (owned >= needed)
		return needed === 1
			? say`1 kit is enough; this unit has ${owned} in service`
			: say`${needed} kits are enough; this unit has ${owned} in service`;
	return needed === 1
		? say`1 kit is needed; this unit has only ${owned} in service`
		: say`${needed} kits are needed; this unit has only ${owned} in service`;
}

/** The first problem by its first words; the list under the plan has every one in full. */
function waitingHeadline(isWeek: boolean, { message }: Problem, count: number): string {
	const [first = message] = message.split(semicolon);
	if (count === 1)
		return isWeek
			? say`This week waits for one thing: ${first}`
			: say`This plan waits for one thing: ${first}`;
	return isWeek
		? say`This week waits for ${count} things, first: ${first}`
		: say`This plan waits for ${count} things, first: ${first}`;
}

/** For each kind of kit, the row of the cover table that is the first to be enough. */
export function enoughRows(state: State): ComputedRow<typeof kitCoverSheet>[] {
	const enough = rowsOf(state.plan, kitCoverSheet).filter((row) => wordIn(row.enough) === "yes");
	return enough.filter((row, at) => at === 0 || wordIn(row.kind) !== wordIn(enough[at - 1]?.kind));
}

function coverHeadline(state: State): string {
	const rows = enoughRows(state);
	if (rows.length === 0) return titleOf(kitCoverSheet.file);
	return rows.map((row) => enoughWords(row, rows.length > 1)).join(semicolon);
}

function enoughWords(row: ComputedRow<typeof kitCoverSheet>, named: boolean): string {
	const needed = numberIn(row.kits) ?? 0;
	if (named) return say`${wordIn(row.kind)}: ${needed}`;
	const fewer = needed - 1;
	if (fewer === 0) return say`1 kit is enough`;
	return fewer === 1
		? say`${needed} kits are enough; 1 is not`
		: say`${needed} kits are enough; ${fewer} are not`;
}

function mixingHeadline(state: State): string {
	const row = rowsOf(state.plan, mixingSheet).find(
		(r) => numberIn(r.product_quantity) !== undefined,
	);
	const quantity = numberIn(row?.product_quantity);
	const water = numberIn(row?.water_litres);
	const litres = numberIn(row?.litres);
	if (quantity === undefined || water === undefined || litres === undefined)
		return titleOf(mixingSheet.file);
	const amount = amountOf(quantity, wordIn(row?.product_measure), EXACT);
	return say`${shownNumber(water, 2)} L of water, then ${amount} of ${wordIn(row?.product)}: ${shownNumber(litres, 1)} L`;
}

import { rowsOf } from "../../../core/plan/rowsOf.ts";
import { say } from "../../../core/say.ts";
import { dayPlanSheet } from "../../../core/sheets/dayPlan.ts";
import { leversSheet } from "../../../core/sheets/levers.ts";
import { shownAs } from "../../format/shownFigure.ts";
import { numberIn, wordIn } from "../../state/numberIn.ts";
import type { State } from "../../state/store.ts";
import { hasAnswer, type Side } from "./side.ts";

/** What the right side does to the kits, seen from the left one, in a sentence. */
export function whatIfHeadline(left: Side, right: Side): string {
	for (const side of [left, right])
		if (!hasAnswer(side)) return say`No answer yet for ${side.title}: something is missing`;
	const [kitsBefore, kitsAfter] = [left, right].map(({ state }) => kitsNeeded(state));
	if (kitsBefore === undefined || kitsAfter === undefined) return say`What if it were different?`;
	const kits = kitsWords(right.title, kitsBefore, kitsAfter);
	const [before, after] = [left, right].map(({ state }) => unmet(state));
	return before === undefined || after === undefined || before === after
		? kits
		: say`${kits}; ${after} of 1,000 needs find none ready instead of ${before}`;
}

function kitsWords(title: string, before: number, after: number): string {
	if (before === after)
		return after === 1
			? say`With ${title}: 1 kit is needed, as before`
			: say`With ${title}: ${after} kits are needed, as before`;
	return after === 1
		? say`With ${title}: 1 kit instead of ${before}`
		: say`With ${title}: ${after} kits instead of ${before}`;
}

function kitsNeeded(state: State): number | undefined {
	return numberIn(rowsOf(state.plan, dayPlanSheet)[0]?.kits_needed);
}

/** Of the kind whose needs most often find none ready. */
function unmet(state: State): string | undefined {
	const rows = rowsOf(state.plan, leversSheet);
	const asItIs = rows.filter(
		(row, at) => at === 0 || wordIn(row.kind) !== wordIn(rows[at - 1]?.kind),
	);
	const worst = Math.max(...asItIs.map((row) => numberIn(row.unmet_per_1000_uses) ?? Number.NaN));
	return Number.isFinite(worst)
		? shownAs(leversSheet.columns.unmet_per_1000_uses, worst)
		: undefined;
}

import { rowsOf } from "../../../core/plan/rowsOf.ts";
import { say } from "../../../core/say.ts";
import { dayPlanSheet } from "../../../core/sheets/dayPlan.ts";
import { leversSheet } from "../../../core/sheets/levers.ts";
import { capital } from "../../format/capital.ts";
import { counted } from "../../format/counted.ts";
import { shownAs } from "../../format/shownFigure.ts";
import { numberIn, wordIn } from "../../state/numberIn.ts";
import type { State } from "../../state/store.ts";
import { hasAnswer, type Side } from "./side.ts";

/** Which side leaves fewer needs without a kit, and by how much; then what it takes in kits. */
export function whatIfHeadline(left: Side, right: Side): string {
	for (const side of [left, right])
		if (!hasAnswer(side)) return say`No answer yet for ${side.title}: something is missing`;
	const [leftKits, rightKits] = [left, right].map(({ state }) => kitsNeeded(state));
	const [leftUnmet, rightUnmet] = [left, right].map(({ state }) => unmet(state));
	if (leftKits === undefined || rightKits === undefined) return say`What if it were different?`;
	if (leftUnmet === undefined || rightUnmet === undefined)
		return kitsWords(right.title, rightKits, leftKits);
	const shown = [leftUnmet, rightUnmet].map((each) =>
		shownAs(leversSheet.columns.unmet_per_1000_uses, each),
	);
	if (shown[0] === shown[1])
		return say`Both are as safe: ${shown[0]} of 1\u202f000 times no kit is ready when needed. ${kitsWords(right.title, rightKits, leftKits)}`;
	const isBetter = rightUnmet < leftUnmet;
	const [better, fewer, more] = isBetter ? [right, shown[1], shown[0]] : [left, shown[0], shown[1]];
	const kits = isBetter
		? kitsWords(right.title, rightKits, leftKits)
		: kitsWords(left.title, leftKits, rightKits);
	return say`${capital(better.title)} is safer: ${fewer} of 1\u202f000 times no kit is ready when needed; on the other side ${more}. ${kits}`;
}

/** How many kits a side needs, seen beside the other one. */
function kitsWords(title: string, kits: number, others: number): string {
	if (kits === others) return say`Each needs ${counted(kits, "kit")}`;
	const difference = counted(Math.abs(kits - others), "kit");
	return kits > others
		? say`${capital(title)} needs ${counted(kits, "kit")}, ${difference} more`
		: say`${capital(title)} needs ${counted(kits, "kit")}, ${difference} fewer`;
}

function kitsNeeded(state: State): number | undefined {
	return numberIn(rowsOf(state.plan, dayPlanSheet)[0]?.kits_needed);
}

/** Of the kind whose needs most often find none ready. */
function unmet(state: State): number | undefined {
	const rows = rowsOf(state.plan, leversSheet);
	const asItIs = rows.filter(
		(row, at) => at === 0 || wordIn(row.kind) !== wordIn(rows[at - 1]?.kind),
	);
	const worst = Math.max(...asItIs.map((row) => numberIn(row.unmet_per_1000_uses) ?? Number.NaN));
	return Number.isFinite(worst) ? worst : undefined;
}

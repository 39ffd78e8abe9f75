import { inSentence } from "../../../core/inSentence.ts";
import { rowsOf } from "../../../core/plan/rowsOf.ts";
import { say } from "../../../core/say.ts";
import { scorecardSheet } from "../../../core/sheets/scorecard.ts";
import { shownNumber } from "../../format/shownNumber.ts";
import { numberIn, wordIn } from "../../state/numberIn.ts";
import type { State } from "../../state/store.ts";

/** Fewer days than this prove little about a forecast (rule of thumb). */
const FEW_DAYS = 28;

interface Score {
	readonly days: number;
	readonly inside90: number;
	readonly chance: number;
	readonly others: readonly { readonly way: string; readonly chance: number }[];
}

function scoreOf(state: State): Score | undefined {
	const [forecast, ...simple] = rowsOf(state.plan, scorecardSheet);
	const days = numberIn(forecast?.days);
	const inside90 = numberIn(forecast?.inside_90);
	const chance = numberIn(forecast?.chance_given);
	if (days === undefined || inside90 === undefined || chance === undefined) return undefined;
	const others = simple.map((row) => ({
		way: inSentence(wordIn(row.way)),
		chance: numberIn(row.chance_given) ?? 0,
	}));
	return { days, inside90, chance, others };
}

/** Chances closer than this are the same for all that can be told. */
const SAME = 1.005;
const LITTLE = 1.05;

/** Whether the forecast is worth believing, in one line. */
export function scorecardHeadline(state: State): string | undefined {
	const score = scoreOf(state);
	if (!score) return undefined;
	const better = score.others.filter(({ chance }) => chance > score.chance * SAME);
	if (better.length > 0)
		return say`A simpler way did better: ${better.map(({ way }) => way).join(", ")}`;
	return score.others.every(({ chance }) => score.chance > chance * SAME)
		? say`The forecast did better than both simple ways`
		: say`The forecast did as well as both simple ways`;
}

/** How often the range held, and how the forecast did beside each simple way. */
export function scorecardSentence(state: State): string | undefined {
	const score = scoreOf(state);
	if (!score) return undefined;
	const inside = Math.round((score.inside90 * score.days) / 100);
	const share = say`${inside} of them (${Math.round(score.inside90)} in 100) fell inside the range meant for nine days of ten`;
	const parts = [
		say`Each of ${score.days} past days was forecast from the days before it.`,
		range(share, score),
		say`On average it gave what then came a chance of ${shownNumber(score.chance, 1)} %; ${score.others.map((other) => beside(score.chance, other)).join(", ")}.`,
		score.days < FEW_DAYS &&
			say`${score.days} days are few: look again when the register is longer.`,
	];
	return parts.filter(Boolean).join(" ");
}

function range(share: string, { inside90, days }: Score): string {
	// Two standard errors of a share of nine in ten.
	const room = 200 * Math.sqrt((0.9 * 0.1) / days);
	if (inside90 < 90 - room) return say`${share}: too few, so plan for more than it says.`;
	return inside90 > 90 + room
		? say`${share}: more than promised, so the ranges are on the safe side.`
		: `${share}.`;
}

function beside(chance: number, { way, chance: other }: Score["others"][number]): string {
	return say`“${way}” gave ${shownNumber(other, 1)} %, so the forecast was ${compared(chance / other)}`;
}

function compared(ratio: number): string {
	if (ratio > LITTLE) return say`better`;
	if (ratio > SAME) return say`a little better`;
	if (ratio > 1 / SAME) return say`as good`;
	return ratio > 1 / LITTLE ? say`a little worse` : say`worse`;
}

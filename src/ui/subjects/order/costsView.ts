import type { ComputedRow } from "../../../core/computedTable.ts";
import { inSentence } from "../../../core/inSentence.ts";
import { rowsOf } from "../../../core/plan/rowsOf.ts";
import { say } from "../../../core/say.ts";
import { costsSheet } from "../../../core/sheets/costs.ts";
import { el } from "../../dom/el.ts";
import { shownNumber } from "../../format/shownNumber.ts";
import { numberIn, wordIn } from "../../state/numberIn.ts";
import { sentenceIn } from "../../state/sentenceIn.ts";
import type { State } from "../../state/store.ts";
import { unitSetting } from "../../state/unitSetting.ts";

const money = (amount: number) => shownNumber(amount, 2);

/** What a week, a birth and a kit cost, in one line. */
export function costsHeadline(state: State): string | undefined {
	const [now] = rowsOf(state.plan, costsSheet);
	const week = numberIn(now?.per_week);
	if (week === undefined) return undefined;
	const currency = unitSetting(state, "currency") ?? "";
	const birth = numberIn(now?.per_birth);
	const kit = numberIn(now?.per_kit);
	const parts = [
		say`${`${money(week)} ${currency}`.trim()} a week`,
		birth !== undefined && say`${money(birth)} a birth`,
		kit !== undefined && say`${money(kit)} a kit`,
	];
	return parts.filter(Boolean).join(", ");
}

/** Which change saves most, and what is not counted. */
function costsSentence(state: State): string | undefined {
	const [now, ...changes] = rowsOf(state.plan, costsSheet);
	const week = numberIn(now?.per_week);
	if (!now || week === undefined) return undefined;
	const currency = unitSetting(state, "currency") || say`money`;
	return [change(changes, week, currency), sentenceIn(now.remark), notCounted]
		.filter(Boolean)
		.join(" ");
}

const notCounted = say`Only what is used up is counted, at the prices in the list of items: not wages, fuel or water.`;

/** Changes stand with the cheapest first. */
function change(
	[best]: readonly ComputedRow<typeof costsSheet>[],
	week: number,
	currency: string,
): string {
	const after = numberIn(best?.per_week);
	if (!best || after === undefined) return "";
	if (after >= week)
		return say`No change of product or rule in this list costs less than things as they are.`;
	const share = Math.round((100 * (week - after)) / week);
	return say`The change that saves most: ${inSentence(wordIn(best.what))}, ${money(week - after)} ${currency} less a week (${share} %). Look at safety and at what can be had before the price.`;
}

/** The sentence over the table of costs. */
export function costsView(state: State): HTMLElement | undefined {
	const words = costsSentence(state);
	return words === undefined ? undefined : el("p", { class: "saying" }, words);
}

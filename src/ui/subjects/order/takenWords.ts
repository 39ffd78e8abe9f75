import { say } from "../../../core/say.ts";
import { itemsSheet } from "../../../core/sheets/items.ts";
import { isNeeded } from "../../../core/stock/stopsWithout.ts";
import { counted, listed } from "../../format/counted.ts";
import { semicolon } from "../../format/semicolon.ts";
import { shownDay } from "../../format/shownDay.ts";
import { shownNumber } from "../../format/shownNumber.ts";
import type { TakenLine, TakenOrder } from "./takenOrder.ts";

const MOST_NAMED = 2;

/** Names, or how many there are where they would fill the line. */
function names(lines: readonly TakenLine[]): string {
	if (lines.length > MOST_NAMED) return counted(lines.length, "item");
	return listed(lines.map(({ item }) => item));
}

function inPart(lines: readonly TakenLine[]): string {
	if (lines.length > MOST_NAMED) return say`${counted(lines.length, "item")} in part`;
	const each = lines.map(
		({ item, taken, ordered }) => say`${item} ${taken ?? 0} of ${counted(ordered, "pack")}`,
	);
	return listed(each);
}

/** How far the money and the packs go, in one line. */
export function takenHeadline(order: TakenOrder, currency: string): string {
	const { lines } = order;
	const whole = lines.filter(({ taken, ordered }) => taken === ordered);
	const part = lines.filter(({ taken, ordered }) => taken && taken < ordered);
	const none = lines.filter(({ taken }) => taken === 0);
	const unknown = lines.filter(({ taken }) => taken === undefined);
	const first = firstOut(lines);
	const parts = [
		whole.length > 0 && say`${names(whole)} whole`,
		part.length > 0 && inPart(part),
		none.length > 0 && say`nothing of ${names(none)}`,
		unknown.length > 0 && say`${names(unknown)} cannot be reckoned with`,
		first && say`${first.item} runs out first, on ${shownDay(first.outWithTaken)}`,
	].filter(Boolean);
	return say`${withWhat(order, currency)}: ${parts.join(semicolon)}`;
}

function withWhat({ money, costOfAll, withoutPrice }: TakenOrder, currency: string): string {
	if (money === undefined) return say`With what the depot sends`;
	const has = shownNumber(money, 2);
	const all = `${shownNumber(costOfAll, 2)} ${currency}`.trim();
	return withoutPrice.length > 0 ? say`With ${has} of at least ${all}` : say`With ${has} of ${all}`;
}

/** Of what is not whole, what runs out first: of what a round needs, if any does. */
function firstOut(lines: readonly TakenLine[]): TakenLine | undefined {
	const short = lines.filter(
		({ taken, ordered, outWithTaken }) =>
			taken !== undefined && taken < ordered && outWithTaken !== "",
	);
	return short[0];
}

/** What is left of the money, what it is too little for, and of what nothing tells. */
export function moneyWords(order: TakenOrder, currency: string): string {
	const { money, spent, lines, withoutPrice } = order;
	if (money === undefined) return "";
	const amount = (sum: number) => `${shownNumber(sum, 2)} ${currency}`.trim();
	const lacking = lines.find(
		({ stops, taken, ordered }) => isNeeded(stops) && taken !== undefined && taken < ordered,
	);
	return [
		order.isLess
			? say`Taken: ${amount(spent)}. Left: ${amount(Math.max(0, money - spent))}.`
			: say`The money pays for the whole order: ${amount(spent)} of ${amount(money)}.`,
		lacking && say`Before anything that a round can do without: find the rest for ${lacking.item}.`,
		withoutPrice.length > 0 &&
			say`Without a price, and so in no sum: ${listed(withoutPrice)}. Enter what a pack costs under “${itemsSheet.title}”.`,
	]
		.filter(Boolean)
		.join(" ");
}

import { rowsOf } from "../../../core/plan/rowsOf.ts";
import { say } from "../../../core/say.ts";
import { boilingSheet } from "../../../core/sheets/boiling.ts";
import { mixingDaysSheet } from "../../../core/sheets/mixingDays.ts";
import { productCompareSheet } from "../../../core/sheets/productCompare.ts";
import { strengthSheet } from "../../../core/sheets/strength.ts";
import { wallTableSheet } from "../../../core/sheets/wallTable.ts";
import { wardUseSheet } from "../../../core/sheets/wardUse.ts";
import { waterSheet } from "../../../core/sheets/water.ts";
import { counted } from "../../format/counted.ts";
import { quantityWords } from "../../format/litreWords.ts";
import { shownDay, shownDayAndYear } from "../../format/shownDay.ts";
import { shownBefore } from "../../format/shownMoment.ts";
import { wordIn } from "../../state/numberIn.ts";
import type { State } from "../../state/store.ts";
import { boilingRounds } from "../water/boilingRounds.ts";
import { waterHeadline } from "../water/waterView.ts";
import { compareHeadline } from "./compareView.ts";
import { mixOfDays } from "./mix.ts";
import { endsFirst, storeOf } from "./strengthView.ts";
import { wardHeadline } from "./wardView.ts";

/** Titles that say the answer, for what is mixed and boiled; undefined where there is none yet. */
export const mixHeadlines: Readonly<Record<string, (state: State) => string | undefined>> = {
	[mixingDaysSheet.file]: daysHeadline,
	[wallTableSheet.file]: wallHeadline,
	[strengthSheet.file]: strengthHeadline,
	[productCompareSheet.file]: compareHeadline,
	[boilingSheet.file]: boilingHeadline,
	[waterSheet.file]: waterHeadline,
	[wardUseSheet.file]: wardHeadline,
};

function daysHeadline(state: State): string | undefined {
	const mixed = mixOfDays(state).flatMap(({ mix }) => mix ?? []);
	const [first, last] = [mixed[0], mixed.at(-1)];
	if (!first || !last) return undefined;
	const start = quantityWords(first.quantity, first.measure);
	const end = quantityWords(last.quantity, last.measure);
	const amount = mixed.every(({ quantity }) => quantity === first.quantity)
		? say`${start} every day`
		: say`${start} on the first day, ${end} on the last`;
	return say`${first.product}: ${amount}`;
}

function wallHeadline(state: State): string | undefined {
	const rows = rowsOf(state.plan, wallTableSheet);
	const products = new Set(rows.map((row) => wordIn(row.product)));
	if (products.size === 0) return undefined;
	return say`A mixing table for the wall: ${counted(products.size, "product")}, one page each`;
}

function strengthHeadline(state: State): string | undefined {
	const first = endsFirst(storeOf(state)?.curves ?? []);
	return (
		first &&
		say`Lot ${first.lot} ends first: usable until ${shownDayAndYear(String(first.lastUsableDay))}`
	);
}

function boilingHeadline(state: State): string | undefined {
	const [next] = boilingRounds(state);
	if (!next?.lightBy) return undefined;
	return say`Light the stove by ${shownBefore(next.lightBy, next.date)}, for ${next.round} on ${shownDay(next.date)}`;
}

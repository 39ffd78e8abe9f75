import {
	type ItemAgainstPlan,
	itemsAgainstPlan,
} from "../../../core/plan/record/itemsAgainstPlan.ts";
import { itemsOverDays } from "../../../core/plan/record/itemsOverDays.ts";
import type { ReadWorkbook } from "../../../core/read/readWorkbook.ts";
import { say } from "../../../core/say.ts";
import type { IsoDate } from "../../../core/values/date.ts";
import { shownWord } from "../../format/choiceWords.ts";
import { listed } from "../../format/counted.ts";
import { shownPlain } from "../../format/shownNumber.ts";
import { paperTable } from "../../print/paperTable.ts";
import type { MonthPicture } from "./monthPicture.ts";

/** No more items than a picture can hold; the table has them all. */
const MOST_ITEMS = 12;
const MOST_NAMED = 4;

/** Whether more went of any item than the plan takes for the work that was done. */
export function itemsAnswer(items: readonly ItemAgainstPlan[], isAnyKept: boolean): string {
	if (!isAnyKept)
		return say`Nothing is recorded of what was used of the items of the store on these days.`;
	if (items.length === 0)
		return say`What was used is written down, but not the rounds, kits and pieces it went for, so it cannot be compared with the plan.`;
	const named = (of: readonly ItemAgainstPlan[]) =>
		listed(
			of.map(
				({ item, used, planned }) => say`${item} (${plain(used)} instead of ${plain(planned)})`,
			),
			MOST_NAMED,
		);
	const more = items.filter(({ low, planned }) => low > planned);
	const fewer = items.filter(({ high, planned }) => high < planned);
	return [
		more.length > 0 && say`More went than the plan takes of: ${named(more)}.`,
		fewer.length > 0 && say`Less went than the plan takes of: ${named(fewer)}.`,
		more.length + fewer.length === 0 &&
			say`What was used fits what the plan takes, as far as one issue more or less can tell; items compared: ${items.length}.`,
	]
		.filter(Boolean)
		.join(" ");
}

/** What was used of each item beside what the plan takes for the rounds that were written down; the furthest from it first. */
export function itemsOfDays(read: ReadWorkbook, days: readonly IsoDate[]): MonthPicture {
	const title = say`What was used against the plan`;
	const isAnyKept = itemsOverDays(read, days).some(({ isKept }) => isKept);
	const items = itemsAgainstPlan(read, days).sort((a, b) => awayFrom(b) - awayFrom(a));
	const words = itemsAnswer(items, isAnyKept);
	if (items.length === 0) return { title, words };
	return {
		title,
		words,
		reading: say`The dot is what was gone by the books, in % of what the plan takes for the rounds, kits and pieces that were written down; the band is the largest issue more or less, which may lie opened at the bench. The dashed line is the plan.`,
		draw: ({ itemsPicture }, width) =>
			itemsPicture(
				items.slice(0, MOST_ITEMS),
				({ item, used, planned }) => say`${item}: ${plain(used)} of ${plain(planned)}`,
				width,
			),
		table: {
			name: say`The numbers, item by item`,
			of: () =>
				paperTable(
					title,
					[
						{ label: say`Item` },
						{ label: say`Used`, numeric: true },
						{ label: say`The plan takes`, numeric: true },
						{ label: say`Used, between`, numeric: true },
					],
					[
						{
							rows: items.map(({ item, measure, used, planned, low, high }) => [
								say`${item} (${shownWord(measure)})`,
								plain(used),
								plain(planned),
								say`${plain(low)} and ${plain(high)}`,
							]),
						},
					],
				),
		},
	};
}

function awayFrom({ used, planned }: ItemAgainstPlan): number {
	return Math.abs(Math.log(Math.max(used, planned / 1000) / planned));
}

/** Sums of typed quantities carry the rounding of adding. */
function plain(quantity: number): string {
	return shownPlain(Number(quantity.toPrecision(3)));
}

import { derive, type Figure, nameFigure } from "../../calculation.ts";
import { Grouped } from "../../grouped.ts";
import { memoizeByObject } from "../../memoize.ts";
import { valueIn } from "../../outcome.ts";
import { advice, type Problem } from "../../problem.ts";
import type { ReadTables, ReadWorkbook } from "../../read/readWorkbook.ts";
import { say } from "../../say.ts";
import { lotsSheet } from "../../sheets/lots.ts";
import { daysTooLong } from "../../stock/daysTooLong.ts";
import { daysFrom, type IsoDate } from "../../values/date.ts";
import { inOrder } from "../../values/inOrder.ts";
import { isComing, type LotOnHand, lotsOnHand } from "./lotsOnHand.ts";

/** The day a lot was last counted: by the journal, else as it came; undefined where nothing says. */
export function lastCountOf({ row, entries }: LotOnHand): IsoDate | undefined {
	const counts = (valueIn(entries) ?? []).filter(({ entry }) => entry === "count");
	return (
		counts
			.map(({ day }) => day)
			.sort()
			.at(-1) ??
		row.value.received_on ??
		undefined
	);
}

/** How long ago the stock of an item was counted. */
export interface CountAge {
	/** Of its lots in the store, the one that was counted longest ago. */
	readonly lot: LotOnHand;
	readonly day: IsoDate;
	readonly days: number;
}

/** With thousands of items, each would search all lots for its own. */
const stocked = memoizeByObject((lots: readonly LotOnHand[]) => {
	const byItem = new Grouped<string, LotOnHand>();
	for (const lot of lots)
		if (lot.quantity > 0 && !isComing(lot)) byItem.add(lot.row.value.item, lot);
	return byItem;
});

/**
 * How old the count of an item is on a day: that of its lot counted longest ago.
 *
 * @returns undefined where nothing of it is in the store, or no lot says when it was counted
 */
export function countAge(
	read: ReadWorkbook,
	item: string,
	firstDay: IsoDate,
): CountAge | undefined {
	return stocked(lotsOnHand(read))
		.of(item)
		.flatMap((lot) => {
			const day = lastCountOf(lot);
			return day === undefined ? [] : [{ lot, day, days: Math.max(0, daysFrom(day, firstDay)) }];
		})
		.sort((a, b) => b.days - a.days || inOrder(a.lot.row.value.lot, b.lot.row.value.lot))[0];
}

/** Whether the plan uses an item up: by a line of usage, or as the product in use. */
function isReliedOn({ tables }: ReadWorkbook, item: string): boolean {
	return reliedOn(tables).has(item);
}

const reliedOn = memoizeByObject(
	({ usage, chlorine }: ReadTables) =>
		new Set([
			...usage.rows.map(({ value }) => value.item),
			...chlorine.rows.flatMap(({ value }) => (value.in_use === "yes" ? [value.product] : [])),
		]),
);

/** For how many days the stock of an item has not been counted, where on a day that is too long; null where it is not. */
export function daysNotCounted(
	read: ReadWorkbook,
	item: string,
	day: IsoDate,
): Figure<number | null> {
	const { daysAgo, isUsedUp } = daysTooLong.inputs;
	return derive(daysTooLong, {
		daysAgo: nameFigure(daysAgo.label, countAge(read, item, day)?.days ?? null),
		everyDays: read.settings.count_every_days,
		isUsedUp: nameFigure(isUsedUp.label, isReliedOn(read, item) ? "yes" : "no"),
	});
}

/** An item whose count is too old, and how old it is. */
export interface OldCount extends CountAge {
	readonly item: string;
}

/** The items that the plan uses up and that on a day were last counted too long ago, in the order of the store; none where nobody can read how often is meant. */
export function countedTooLongAgo(read: ReadWorkbook, day: IsoDate): OldCount[] {
	return read.tables.items.rows.flatMap(({ value: { item } }) => {
		const age = countAge(read, item, day);
		const isTooLong = typeof valueIn(daysNotCounted(read, item, day)) === "number";
		return age && isTooLong ? [{ item, ...age }] : [];
	});
}

/** Items that the plan takes from stock although they were last counted too long ago, each once. */
export function countAdvice(read: ReadWorkbook, firstDay: IsoDate): Problem[] {
	const every = valueIn(read.settings.count_every_days);
	return countedTooLongAgo(read, firstDay).map(({ item, lot, day, days }) =>
		advice(
			{ file: lotsSheet.file, line: lot.row.line, column: "quantity" },
			{
				code: "count-too-old",
				received: day,
				allowed: say`a count every ${every} days`,
				message: say`${item}: last counted on ${day}, ${days} days before the plan begins, and the plan relies on it. Count it.`,
			},
		),
	);
}

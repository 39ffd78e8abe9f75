import { valueIn } from "../../outcome.ts";
import { advice, type Problem } from "../../problem.ts";
import type { ReadWorkbook } from "../../read/readWorkbook.ts";
import { say } from "../../say.ts";
import { lotsSheet } from "../../sheets/lots.ts";
import { daysFrom } from "../../stock/lotsInStore.ts";
import type { IsoDate } from "../../values/date.ts";
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
	return lotsOnHand(read)
		.filter((lot) => lot.row.value.item === item && lot.quantity > 0 && !isComing(lot))
		.flatMap((lot) => {
			const day = lastCountOf(lot);
			return day === undefined ? [] : [{ lot, day, days: Math.max(0, daysFrom(day, firstDay)) }];
		})
		.sort((a, b) => b.days - a.days || inOrder(a.lot.row.value.lot, b.lot.row.value.lot))[0];
}

/** Whether the plan uses an item up: by a line of usage, or as the product in use. */
export function isReliedOn({ tables }: Pick<ReadWorkbook, "tables">, item: string): boolean {
	return (
		tables.usage.rows.some(({ value }) => value.item === item) ||
		tables.chlorine.rows.some(({ value }) => value.product === item && value.in_use === "yes")
	);
}

/** Items that the plan takes from stock although they were last counted too long ago, each once. */
export function countAdvice(read: ReadWorkbook, firstDay: IsoDate): Problem[] {
	const every = valueIn(read.settings.count_every_days);
	if (every === undefined) return [];
	return read.tables.items.rows.flatMap(({ value: { item } }) => {
		const age = countAge(read, item, firstDay);
		if (age === undefined || age.days <= every || !isReliedOn(read, item)) return [];
		return [
			advice(
				{ file: lotsSheet.file, line: age.lot.row.line, column: "quantity" },
				{
					code: "count-too-old",
					received: age.day,
					allowed: say`a count every ${every} days`,
					message: say`${item}: last counted on ${age.day}, ${age.days} days before the plan begins, and the plan relies on it. Count it.`,
				},
			),
		];
	});
}

import { derive, type Figure, listOf, refusedFigure, typedFigure } from "../../calculation.ts";
import { Grouped } from "../../grouped.ts";
import { memoizeByObject } from "../../memoize.ts";
import { answer, firstReasons, valueIn } from "../../outcome.ts";
import type { Problem } from "../../problem.ts";
import { cellFigure } from "../../read/cellFigure.ts";
import type { GoodRow } from "../../read/goodRow.ts";
import type { ReadWorkbook } from "../../read/readWorkbook.ts";
import { journalSheet } from "../../sheets/journal.ts";
import { type LotsRow, lotsSheet } from "../../sheets/lots.ts";
import { type JournalEntry, onHand, onHandInputs } from "../../stock/onHand.ts";
import type { IsoDate } from "../../values/date.ts";
import { countsByNow } from "../countsByNow.ts";
import { type StoreEntry, storeEntries } from "./storeEntries.ts";
import { unreadEntries } from "./unreadEntries.ts";

/** A lot of the store with what is left of it. */
export interface LotOnHand {
	readonly row: GoodRow<LotsRow>;
	/** As listed; after an entry of the journal, worked out; without a value where one of its entries cannot be read. */
	readonly onHand: Figure;
	/** By what can be read: whether there is some to measure out from. */
	readonly quantity: number;
	readonly entries: Figure<JournalEntry[]>;
}

/** Every lot that could be understood, as the journal leaves it. */
export const lotsOnHand = memoizeByObject((read: ReadWorkbook): readonly LotOnHand[] => {
	const byLot = new Grouped<string, StoreEntry>();
	for (const each of storeEntries(read))
		if (countsByNow(read, each.entry.day)) byLot.add(nameOf(each), each);
	return read.tables.lots.rows.map((row) => {
		const own = byLot.of(nameOf(row.value));
		const entries = entriesFigure(own);
		const listed = cellFigure(lotsSheet, row, "quantity");
		const figure = own.length > 0 ? derive(onHand, { listed, entries }) : listed;
		const unread = unreadEntries(read, row.value, valueIn(entries) as JournalEntry[]);
		return { row, onHand: known(figure, unread), quantity: valueIn(figure) as number, entries };
	});
});

/** A figure that hangs on lines which may not be readable. */
function known(figure: Figure, unread: readonly Problem[]): Figure {
	const place = { file: journalSheet.file, line: null, column: "quantity" };
	return unread.length === 0
		? figure
		: refusedFigure(onHand.label, onHand.unit, place, ...firstReasons(unread));
}

/** Whether a lot was announced and nothing says yet that it came: no day of receipt, no entry of the journal. */
export function isComing({ row, entries }: LotOnHand): boolean {
	const { arrives_on: arrives, received_on: received } = row.value;
	return arrives !== null && received === null && (valueIn(entries) as JournalEntry[]).length === 0;
}

/** The day from which a lot on its way counts; null where it is in the store, whatever day was announced. */
export function arrivesOn(lot: LotOnHand): IsoDate | null {
	return isComing(lot) ? lot.row.value.arrives_on : null;
}

/** Whether the day has passed on which a lot should have come. */
export function isOverdue(lot: LotOnHand, day: IsoDate): boolean {
	return isComing(lot) && day > (lot.row.value.arrives_on as IsoDate);
}

/** Whether the last day of a lot that never came has passed too: whatever comes of it can be used on no day. */
export function isOverdueAndOutOfDate(lot: LotOnHand, day: IsoDate): boolean {
	const { expires_on: expires } = lot.row.value;
	return isOverdue(lot, day) && expires !== null && expires < day;
}

function nameOf({ item, lot }: { readonly item: string; readonly lot: string }): string {
	return JSON.stringify([item, lot]);
}

function entriesFigure(all: readonly StoreEntry[]): Figure<JournalEntry[]> {
	const { label, unit } = onHandInputs.entries;
	const entries = all.map(({ entry }): JournalEntry => entry);
	return listOf(label, unit, answer(entries), () =>
		Object.fromEntries(
			all.map(({ key, label: name, place, entry }): [string, Figure<JournalEntry>] => [
				key,
				typedFigure(name, unit, entry, place),
			]),
		),
	);
}

import { Grouped } from "../../grouped.ts";
import type { ReadWorkbook } from "../../read/readWorkbook.ts";
import type { LotsRow } from "../../sheets/lots.ts";
import { booksAfter, type JournalEntry } from "../../stock/onHand.ts";
import type { IsoDate } from "../../values/date.ts";
import { storeEntries } from "../store/storeEntries.ts";
import { recordedDays } from "./recordedDays.ts";

/** What the books say of one item over some days, in its measure. */
export interface ItemOverDays {
	readonly item: string;
	readonly measure: string;
	/** Whether the journal has any line of it within the days, or a round drew it; else nothing is known of its use. */
	readonly isKept: boolean;
	/** On hand before the first day. */
	readonly opening: number;
	readonly received: number;
	readonly issued: number;
	readonly lost: number;
	/** What counts found more (or less) than the books held, and what was issued beyond them: closing = opening + received − issued − lost + this. */
	readonly difference: number;
	/** On hand after the last day. */
	readonly closing: number;
	/** Day of the last count within the days; undefined without one. */
	readonly countedOn: IsoDate | undefined;
	/** Days at whose end nothing usable was in the store, up to the last one of which anything is written down: of days to come nobody knows. */
	readonly daysWithoutStock: number;
	/** The largest single issue: so much may lie opened at the bench and not be used yet. */
	readonly largestIssue: number;
}

/**
 * What was gone by the end: opening + received − lost − closing, so that a count corrects it
 * for what was taken and not written down. Without a count it is what was issued, which may
 * be more than the books held.
 */
export function usedOf({
	opening,
	received,
	issued,
	lost,
	closing,
	countedOn,
}: ItemOverDays): number {
	return countedOn === undefined ? issued : opening + received - lost - closing;
}

/**
 * Every item of the store over some days. Each lot's books go on day by day, as they do on
 * the page of the store, with what rounds draw where they do; a lot counts as received on its day with the quantity in its list.
 *
 * @param days in order, without gaps
 */
export function itemsOverDays(read: ReadWorkbook, days: readonly IsoDate[]): ItemOverDays[] {
	const { items, lots } = read.tables;
	const lotsOf = new Grouped<string, LotsRow>();
	for (const { value } of lots.rows) lotsOf.add(value.item, value);
	const entriesOf = entriesByLot(read);
	const lastDay = recordedDays(read.tables).sort().at(-1) ?? "";
	const known = days.filter((day) => day <= lastDay).length;
	return items.rows.map(({ value: { item, measure } }) => {
		const sum = new Sum(days.length);
		for (const lot of lotsOf.of(item)) addLot(sum, lot, entriesOf(lot), days);
		const { opening, received, issued, lost, closing } = sum;
		return {
			item,
			measure,
			isKept: sum.isKept,
			opening,
			received,
			issued,
			lost,
			difference: closing - (opening + received - issued - lost),
			closing,
			countedOn: sum.countedOn,
			daysWithoutStock: sum.usable.slice(0, known).filter((quantity) => quantity <= 0).length,
			largestIssue: sum.largestIssue,
		};
	});
}

/** How much of each item came on some days as a lot of its own, in no line of the journal. */
export function cameAsLots(
	read: ReadWorkbook,
	days: readonly IsoDate[],
): ReadonlyMap<string, number> {
	const all = new Set(days);
	const entriesOf = entriesByLot(read);
	const came = new Map<string, number>();
	for (const { value: lot } of read.tables.lots.rows) {
		const from = hereFrom(lot, entriesOf(lot));
		if (from === undefined || !all.has(from)) continue;
		came.set(lot.item, (came.get(lot.item) ?? 0) + lot.quantity);
	}
	return came;
}

function entriesByLot(read: ReadWorkbook): (lot: LotsRow) => readonly JournalEntry[] {
	const entriesOf = new Grouped<string, JournalEntry>();
	for (const { item, lot, entry } of storeEntries(read))
		entriesOf.add(JSON.stringify([item, lot]), entry);
	return ({ item, lot }) => entriesOf.of(JSON.stringify([item, lot]));
}

class Sum {
	opening = 0;
	received = 0;
	issued = 0;
	lost = 0;
	closing = 0;
	largestIssue = 0;
	isKept = false;
	countedOn: IsoDate | undefined;
	/** In date at the end of each day. */
	readonly usable: number[];

	constructor(days: number) {
		this.usable = Array.from({ length: days }, () => 0);
	}

	add({ day, entry, quantity }: JournalEntry): void {
		this.isKept = true;
		if (entry === "receipt") this.received += quantity;
		else if (entry === "loss") this.lost += quantity;
		else if (entry === "issue") {
			this.issued += quantity;
			this.largestIssue = Math.max(this.largestIssue, quantity);
		} else if (this.countedOn === undefined || this.countedOn < day) this.countedOn = day;
	}
}

function addLot(
	sum: Sum,
	lot: LotsRow,
	entries: readonly JournalEntry[],
	days: readonly IsoDate[],
): void {
	const first = days[0] as IsoDate;
	const from = hereFrom(lot, entries);
	if (from === undefined) return;
	const byDay = new Grouped<IsoDate, JournalEntry>();
	for (const entry of entries) byDay.add(entry.day, entry);
	let quantity = 0;
	if (from < first) {
		const before = entries.filter(({ day }) => day < first);
		quantity = booksAfter(lot.quantity, before).quantity;
		sum.opening += quantity;
	}
	days.forEach((day, at) => {
		if (day === from) {
			quantity += lot.quantity;
			sum.received += lot.quantity;
		}
		const today = byDay.of(day);
		for (const entry of today) sum.add(entry);
		if (today.length > 0) quantity = booksAfter(quantity, today).quantity;
		if (lot.expires_on === null || lot.expires_on >= day)
			sum.usable[at] = (sum.usable[at] as number) + quantity;
	});
	sum.closing += quantity;
}

/** Since when a lot is in the store: its day, or the first that is written of it; undefined while it is on its way. */
function hereFrom(lot: LotsRow, entries: readonly JournalEntry[]): IsoDate | undefined {
	const firstLine = entries.map(({ day }) => day).sort()[0];
	if (lot.received_on !== null)
		return firstLine !== undefined && firstLine < lot.received_on ? firstLine : lot.received_on;
	return lot.arrives_on === null ? "" : firstLine;
}

import { tableOf, withTexts } from "../../../core/edit/withTexts.ts";
import type { GoodRow } from "../../../core/read/rows.ts";
import { say } from "../../../core/say.ts";
import { journalSheet } from "../../../core/sheets/journal.ts";
import { type LotsRow, lotsSheet } from "../../../core/sheets/lots.ts";
import { booksAfter } from "../../../core/stock/onHand.ts";
import { lineOf, type Workbook } from "../../../core/workbook.ts";
import { amountOf } from "../../format/amountOf.ts";
import { shownDay } from "../../format/shownDay.ts";
import { shownPlain } from "../../format/shownNumber.ts";
import { type StoreBooks, storeBooks } from "./storeBooks.ts";
import {
	measureOf,
	quantityOf,
	type StoreEntry,
	type WrongField,
	wrongFields,
} from "./storeEntry.ts";

/** Decimals of what people count. */
const EXACT = 3;

/** The workbook after an entry and what it means in words, or what is wrong with the entry. */
export type Entered =
	| { readonly ok: true; readonly workbook: Workbook; readonly said: string }
	| { readonly ok: false; readonly wrong: readonly WrongField[] };

/**
 * Writes a count, a receipt or an issue into the books of the store.
 *
 * All go into the journal, but for two: a lot that is new stands in the list of
 * lots, and so does a lot that was on its way, because its quantity is in the
 * books from then on; a receipt beside it would count it twice.
 */
export function entered(workbook: Workbook, entry: StoreEntry): Entered {
	const wrong = wrongFields(entry);
	if (wrong.length > 0) return { ok: false, wrong };
	const books = storeBooks(workbook);
	const lot = books.lots.rows.find(
		({ value }) => value.item === entry.item && value.lot === entry.lot.trim(),
	);
	if (entry.isNew) return lot ? refused("lot", doubled(entry)) : newLot(workbook, books, entry);
	if (!lot)
		return refused("lot", say`Choose a lot; one that is not in the list is entered as new.`);
	const { arrives_on: arrives, received_on: received } = lot.value;
	const isComing = arrives !== null && received === null && entriesOf(books, lot).length === 0;
	if (isComing && entry.kind === "receipt") return arrival(workbook, books, entry, lot);
	if (arrives !== null && arrives > entry.day) return refused("lot", notHere(entry, arrives));
	return journalled(workbook, books, entry, lot);
}

function refused(field: WrongField["field"], words: string): Entered {
	return { ok: false, wrong: [{ field, words }] };
}

function doubled({ item, lot }: StoreEntry): string {
	return say`${item} has a lot ${lot.trim()} in the books already: choose it from the list.`;
}

function notHere({ lot }: StoreEntry, arrives: string): string {
	return say`Lot ${lot} is on its way and expected on ${shownDay(arrives)}: enter it as received first.`;
}

function entriesOf({ journal }: StoreBooks, { value: { item, lot } }: GoodRow<LotsRow>) {
	return journal.rows
		.map(({ value }) => value)
		.filter((value) => value.item === item && value.lot === lot);
}

function journalled(
	workbook: Workbook,
	books: StoreBooks,
	entry: StoreEntry,
	lot: GoodRow<LotsRow>,
): Entered {
	const { day, item, kind, quantity, note } = entry;
	const cells = { day, item, lot: lot.value.lot, entry: kind, quantity: quantity.trim(), note };
	const next = withRow(workbook, journalSheet.file, cells);
	const earlier = entriesOf(books, lot).filter((each) => each.day <= day);
	const before = booksAfter(lot.value.quantity, earlier).quantity;
	const after = booksAfter(lot.value.quantity, entriesOf(storeBooks(next), lot));
	const measure = measureOf(books.items, item);
	return {
		ok: true,
		workbook: next,
		said: [
			say`${item}, lot ${lot.value.lot}.`,
			difference(kind, quantityOf(entry), before, measure),
			say`On hand now: ${amountOf(after.quantity, measure, EXACT)}.`,
		].join(" "),
	};
}

/** What an entry says against the books. */
function difference(
	kind: StoreEntry["kind"],
	quantity: number,
	books: number,
	measure: string,
): string {
	const amount = amountOf(quantity, measure, EXACT);
	if (kind === "receipt") return say`Received ${amount}.`;
	const gap = Number((quantity - books).toFixed(6));
	if (kind === "issue")
		return gap > 0
			? say`Issued ${amount}, ${shownPlain(gap)} more than the books held: count this lot.`
			: say`Issued ${amount}.`;
	const said = shownPlain(books);
	if (gap === 0) return say`Counted ${amount}; the books said ${said}: they agree.`;
	return gap < 0
		? say`Counted ${amount}; the books said ${said}: ${shownPlain(-gap)} less than expected.`
		: say`Counted ${amount}; the books said ${said}: ${shownPlain(gap)} more than expected.`;
}

/** A note has no place among the lots; it is kept in the journal, with the lot counted as it came. */
function withNote(workbook: Workbook, { day, item, lot, quantity, note }: StoreEntry): Workbook {
	if (note.trim() === "") return workbook;
	const cells = { day, item, lot: lot.trim(), entry: "count", quantity: quantity.trim(), note };
	return withRow(workbook, journalSheet.file, cells);
}

/** One more row at the end of a sheet. */
function withRow(
	workbook: Workbook,
	file: string,
	cells: Readonly<Record<string, string>>,
	row = tableOf(workbook, file).rows.length,
): Workbook {
	const texts = Object.entries(cells).map(([column, text]) => ({ row, column, text }));
	return withTexts(workbook, file, texts);
}

/** A lot that was ordered has come: its own row says when and how much. */
function arrival(
	workbook: Workbook,
	books: StoreBooks,
	entry: StoreEntry,
	lot: GoodRow<LotsRow>,
): Entered {
	const table = tableOf(workbook, lotsSheet.file);
	const row = table.rows.findIndex((_, at) => lineOf(table, at) === lot.line);
	const cells = { quantity: entry.quantity.trim(), received_on: entry.day, arrives_on: entry.day };
	const came = quantityOf(entry);
	const gap = Number((came - lot.value.quantity).toFixed(6));
	const measure = measureOf(books.items, entry.item);
	const against =
		gap === 0
			? say`as ordered`
			: gap < 0
				? say`${shownPlain(-gap)} less than ordered`
				: say`${shownPlain(gap)} more than ordered`;
	return {
		ok: true,
		workbook: withNote(withRow(workbook, lotsSheet.file, cells, row), entry),
		said: say`${entry.item}, lot ${lot.value.lot}: arrived on ${shownDay(entry.day)}, ${amountOf(came, measure, EXACT)}, ${against}.`,
	};
}

function newLot(workbook: Workbook, books: StoreBooks, entry: StoreEntry): Entered {
	const cells = {
		item: entry.item,
		lot: entry.lot.trim(),
		quantity: entry.quantity.trim(),
		made_on: entry.made,
		received_on: entry.day,
		expires_on: entry.expires,
	};
	const measure = measureOf(books.items, entry.item);
	return {
		ok: true,
		workbook: withNote(withRow(workbook, lotsSheet.file, cells), entry),
		said: say`${entry.item}: new lot ${entry.lot.trim()} with ${amountOf(quantityOf(entry), measure, EXACT)}, received on ${shownDay(entry.day)}. It stands in the list of lots.`,
	};
}

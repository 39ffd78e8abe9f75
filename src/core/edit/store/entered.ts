import type { Place } from "../../problem.ts";
import type { GoodRow } from "../../read/goodRow.ts";
import { say } from "../../say.ts";
import { journalSheet } from "../../sheets/journal.ts";
import { type LotsRow, lotsSheet } from "../../sheets/lots.ts";
import { booksAfter, type JournalEntry } from "../../stock/onHand.ts";
import { lineOf, type Workbook } from "../../workbook.ts";
import { withRow } from "../withRow.ts";
import { tableOf } from "../withTexts.ts";
import { storeBooks } from "./storeBooks.ts";
import { type StoreEntry, type WrongField, wrongFields } from "./storeEntry.ts";

/** What an entry has come to, for a page to put in words; quantities are in the item's measure. */
export type Done =
	/** It stands in the journal: what the books said on its day, and what is on hand now. */
	| { readonly kind: StoreEntry["kind"]; readonly books: number; readonly onHand: number }
	/** A lot that was on its way has come. */
	| { readonly kind: "arrival"; readonly ordered: number }
	| { readonly kind: "new_lot" };

/** The workbook after an entry and what it came to, or what keeps it from being written. */
export type Entered =
	| { readonly ok: true; readonly workbook: Workbook; readonly done: Done }
	| { readonly ok: false; readonly wrong: readonly WrongField[] };

/** What happened to a lot, and where it is written down. */
export interface LotEntry {
	readonly item: string;
	readonly lot: string;
	readonly entry: JournalEntry;
	readonly place: Place;
}

/** What happened to the lots of a workbook, entries of one day in their order. */
export type EntriesIn = (workbook: Workbook) => readonly LotEntry[];

/** Where nothing but the journal says what happened. */
const ofJournal: EntriesIn = (workbook) =>
	storeBooks(workbook).journal.rows.map(
		({ line, value: { item, lot, day, entry, quantity } }): LotEntry => ({
			item,
			lot,
			entry: { day, entry, quantity },
			place: { file: journalSheet.file, line, column: "quantity" },
		}),
	);

/**
 * Writes a count, a receipt, an issue or a loss into the books of the store.
 *
 * All go into the journal, but for two: a lot that is new stands in the list of
 * lots, and so does a lot that was on its way, because its quantity is in the
 * books from then on; a receipt beside it would count it twice.
 *
 * @param entriesIn by which the books are told: rounds may draw from lots too
 */
export function entered(
	workbook: Workbook,
	entry: StoreEntry,
	entriesIn: EntriesIn = ofJournal,
): Entered {
	const wrong = wrongFields(entry);
	if (wrong.length > 0) return { ok: false, wrong };
	const books = storeBooks(workbook);
	const lot = books.lots.rows.find(
		({ value }) => value.item === entry.item && value.lot === entry.lot.trim(),
	);
	if (entry.isNew)
		return lot ? refused({ field: "lot", words: doubled(entry) }) : newLot(workbook, entry);
	if (!lot) return refused({ field: "lot", words: CHOOSE });
	const { arrives_on: arrives, received_on: received } = lot.value;
	const ofLot = (all: readonly LotEntry[]) =>
		all.filter((each) => each.item === lot.value.item && each.lot === lot.value.lot);
	const before = ofLot(entriesIn(workbook));
	const isComing = arrives !== null && received === null && before.length === 0;
	if (isComing && entry.kind === "receipt") return arrival(workbook, entry, lot);
	if (isComing && arrives > entry.day) return refused({ field: "lot", arrives });
	return journalled(workbook, entry, lot, before, (next) => ofLot(entriesIn(next)));
}

const CHOOSE = say`Choose a lot; one that is not in the list is entered as new.`;

function refused(wrong: WrongField): Entered {
	return { ok: false, wrong: [wrong] };
}

function doubled({ item, lot }: StoreEntry): string {
	return say`${item} has a lot ${lot.trim()} in the books already: choose it from the list.`;
}

function journalled(
	workbook: Workbook,
	{ day, item, kind, quantity, note }: StoreEntry,
	{ value: { lot, quantity: listed } }: GoodRow<LotsRow>,
	before: readonly LotEntry[],
	entriesIn: EntriesIn,
): Entered {
	const cells = { day, item, lot, entry: kind, quantity: quantity.trim(), note };
	const next = withRow(workbook, journalSheet.file, cells);
	// What a round draws on the same day counts after the lines of the journal.
	const earlier = before.filter(
		({ entry, place }) =>
			entry.day < day || (entry.day === day && place.file === journalSheet.file),
	);
	const books = (all: readonly LotEntry[]) =>
		booksAfter(
			listed,
			all.map(({ entry }) => entry),
		);
	const done = { kind, books: books(earlier).quantity, onHand: books(entriesIn(next)).quantity };
	return { ok: true, workbook: next, done };
}

/** A note has no place among the lots; it is kept in the journal, with the lot counted as it came. */
function withNote(workbook: Workbook, { day, item, lot, quantity, note }: StoreEntry): Workbook {
	if (note.trim() === "") return workbook;
	const cells = { day, item, lot: lot.trim(), entry: "count", quantity: quantity.trim(), note };
	return withRow(workbook, journalSheet.file, cells);
}

/** A lot that was ordered has come: its own row says when and how much. */
function arrival(workbook: Workbook, entry: StoreEntry, lot: GoodRow<LotsRow>): Entered {
	const table = tableOf(workbook, lotsSheet.file);
	const row = table.rows.findIndex((_, at) => lineOf(table, at) === lot.line);
	const cells = { quantity: entry.quantity.trim(), received_on: entry.day, arrives_on: entry.day };
	const listed = withRow(workbook, lotsSheet.file, cells, row);
	const done = { kind: "arrival", ordered: lot.value.quantity } as const;
	return { ok: true, workbook: withNote(listed, entry), done };
}

function newLot(workbook: Workbook, entry: StoreEntry): Entered {
	const listed = withRow(workbook, lotsSheet.file, {
		item: entry.item,
		lot: entry.lot.trim(),
		quantity: entry.quantity.trim(),
		made_on: entry.made,
		received_on: entry.day,
		expires_on: entry.expires,
	});
	return { ok: true, workbook: withNote(listed, entry), done: { kind: "new_lot" } };
}

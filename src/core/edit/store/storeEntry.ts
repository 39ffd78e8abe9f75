import type { ReadTable } from "../../read/goodRow.ts";
import { textsOf } from "../../read/textsOf.ts";
import { say } from "../../say.ts";
import { itemsSheet } from "../../sheets/items.ts";
import { journalSheet } from "../../sheets/journal.ts";
import { lotsSheet } from "../../sheets/lots.ts";
import type { journalKinds } from "../../stock/onHand.ts";
import type { IsoDate } from "../../values/date.ts";
import type { Workbook } from "../../workbook.ts";
import { wrongFor } from "../notAllowed.ts";

/** What a person enters of the store, as typed. */
export interface StoreEntry {
	readonly kind: (typeof journalKinds)[number];
	readonly item: string;
	/** Name of a lot in the books, or of a new one. */
	readonly lot: string;
	readonly isNew: boolean;
	readonly day: string;
	readonly quantity: string;
	/** By whom, why. */
	readonly note: string;
	readonly expires: string;
	readonly made: string;
}

type Field = "item" | "lot" | "day" | "quantity" | "expires" | "made" | "note";

/** What is wrong with a field: in words, or that its lot is on its way and has to be received first. */
export type WrongField =
	| { readonly field: Field; readonly words: string }
	| { readonly field: "lot"; readonly arrives: IsoDate };

const { day, quantity, lot, note } = journalSheet.columns;
const { expires_on, made_on } = lotsSheet.columns;

/** Everything that keeps an entry from being written; empty where nothing does. */
export function wrongFields(entry: StoreEntry): WrongField[] {
	const found: (WrongField | undefined)[] = [
		entry.item === "" ? { field: "item", words: say`Choose an item.` } : undefined,
		wrong("lot", lot, entry.lot),
		wrong("day", day, entry.day),
		wrong("quantity", quantity, entry.quantity),
		wrong("note", note, entry.note),
		entry.isNew ? wrong("expires", expires_on, entry.expires) : undefined,
		entry.isNew ? wrong("made", made_on, entry.made) : undefined,
	];
	return found.filter((each) => each !== undefined);
}

function wrong(
	field: Field,
	column: Parameters<typeof wrongFor>[0],
	text: string,
): WrongField | undefined {
	const words = wrongFor(column, text);
	return words === undefined ? undefined : { field, words };
}

/** Value of a field that has no problem. */
export function quantityOf(entry: StoreEntry): number {
	return quantity.value.schema.parse(entry.quantity);
}

/** The measure of an item, "" where it is not in the list. */
export function measureOf(
	items: ReadTable<{ readonly item: string; readonly measure: string }>,
	item: string,
): string {
	return items.rows.find(({ value }) => value.item === item)?.value.measure ?? "";
}

/** Names of the items as the store's sheet lists them, each once. */
export function itemNames(workbook: Workbook): string[] {
	const { rows, cell } = textsOf(workbook, itemsSheet);
	const names = rows.map((cells) => cell(cells, "item").trim());
	return [...new Set(names.filter((name) => name !== ""))];
}

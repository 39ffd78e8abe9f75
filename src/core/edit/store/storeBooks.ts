import type { ReadTable } from "../../read/goodRow.ts";
import { readTable } from "../../read/readTable.ts";
import { type ItemsRow, itemsSheet } from "../../sheets/items.ts";
import { type JournalRow, journalSheet } from "../../sheets/journal.ts";
import { type LotsRow, lotsSheet } from "../../sheets/lots.ts";
import { type PlacedRow, placedSheet } from "../../sheets/placed.ts";
import type { Workbook } from "../../workbook.ts";

/** The books of the store, as far as they can be understood. */
export interface StoreBooks {
	readonly items: ReadTable<ItemsRow>;
	/** As written; what the journal makes of them is another matter. */
	readonly lots: ReadTable<LotsRow>;
	readonly journal: ReadTable<JournalRow>;
	readonly placed: ReadTable<PlacedRow>;
}

export function storeBooks({ tables }: Workbook): StoreBooks {
	return {
		items: readTable(itemsSheet, tables[itemsSheet.file]),
		lots: readTable(lotsSheet, tables[lotsSheet.file]),
		journal: readTable(journalSheet, tables[journalSheet.file]),
		placed: readTable(placedSheet, tables[placedSheet.file]),
	};
}

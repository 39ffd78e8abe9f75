import type { SheetPart, Surroundings } from "../page.ts";
import { stockAheadPart } from "../subjects/store/stockAheadPart.ts";
import { storeEntryPart } from "../subjects/store/storeEntryPart.ts";

/** By file; most sheets have none. */
export const sheetParts: Readonly<Record<string, (around: Surroundings) => SheetPart>> = {
	"stock-ahead.csv": stockAheadPart,
	"stock.csv": storeEntryPart,
	"journal.csv": storeEntryPart,
};

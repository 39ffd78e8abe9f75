import type { State } from "../state/store.ts";
import { stockAheadPart } from "../subjects/store/stockAheadPart.ts";
import { storeEntryPart } from "../subjects/store/storeEntryPart.ts";
import type { Surroundings } from "./sheetView.ts";

/** A part of a sheet's page that a person works with: made once, painted at every change, so that nothing begun in it is lost. */
export interface SheetPart {
	readonly element: HTMLElement;
	paint(state: State): void;
}

/** By file; most sheets have none. */
export const sheetParts: Readonly<Record<string, (around: Surroundings) => SheetPart>> = {
	"stock-ahead.csv": stockAheadPart,
	"stock.csv": storeEntryPart,
	"journal.csv": storeEntryPart,
};

import { boilingSheetOut } from "../mixing/boilingSheetOut.ts";
import { mixingSheetOut } from "../mixing/mixingSheetOut.ts";
import { wallTableOut } from "../mixing/wallTableOut.ts";
import { runSheetPrintOuts } from "../rounds/runSheetPages.ts";
import { countSheets } from "../supplies/countSheet.ts";
import { orderForm } from "../supplies/orderForm.ts";
import type { PrintOut } from "./printOut.ts";

/** What can be printed from each sheet, by file; a sheet without an entry prints as it stands. */
export const printOuts: Readonly<Record<string, readonly PrintOut[]>> = {
	"order.csv": [orderForm],
	"stock.csv": countSheets,
	"lots.csv": countSheets,
	"journal.csv": countSheets,
	"run-sheet.csv": runSheetPrintOuts,
	"mixing.csv": [mixingSheetOut],
	"mixing-days.csv": [mixingSheetOut],
	"wall-table.csv": [wallTableOut],
	"boiling.csv": [boilingSheetOut],
};

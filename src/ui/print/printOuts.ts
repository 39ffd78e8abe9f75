import type { PrintOut } from "../page.ts";
import { mixingSheetOut } from "../subjects/mixing/mixingSheetOut.ts";
import { wallTableOut } from "../subjects/mixing/wallTableOut.ts";
import { orderForm } from "../subjects/order/orderForm.ts";
import { runSheetPrintOuts } from "../subjects/rounds/runSheetPages.ts";
import { countSheets } from "../subjects/store/countSheet.ts";
import { boilingSheetOut } from "../subjects/water/boilingSheetOut.ts";

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

import { rowsOf } from "../../../core/plan/rowsOf.ts";
import { say } from "../../../core/say.ts";
import { stockSheet } from "../../../core/sheets/stock.ts";
import { counted, listed } from "../../format/counted.ts";
import { semicolon } from "../../format/semicolon.ts";
import type { SheetPage } from "../../page.ts";
import { numberIn, wordIn } from "../../state/numberIn.ts";
import type { State } from "../../state/store.ts";
import { countSheets } from "./countSheets.ts";
import { storeCautions } from "./storeCautions.ts";
import { storeEntryPart } from "./storeEntryPart.ts";

const MOST_NAMED = 2;

/** What is in the store, lot by lot. */
export const stockPage: SheetPage = {
	sheet: stockSheet,
	headline: stockHeadline,
	part: storeEntryPart,
	cautions: storeCautions,
	prints: countSheets,
};

function stockHeadline(state: State): string | undefined {
	const rows = rowsOf(state.plan, stockSheet);
	if (rows.length === 0) return undefined;
	const count = rows.filter((row) => wordIn(row.remark) !== "").length;
	const wasted = rows.filter((row) => (numberIn(row.wasted) ?? 0) > 0);
	const names = listed(
		wasted.map((row) => `${wordIn(row.item)} ${wordIn(row.lot)}`),
		MOST_NAMED,
	);
	const waste =
		wasted.length === 0 ? say`nothing will go to waste` : say`part will go to waste: ${names}`;
	const parts = [
		say`${counted(rows.length, "lot")} in the books`,
		waste,
		count > 0 && say`${counted(count, "lot")} to count again`,
	];
	return parts.filter(Boolean).join(semicolon);
}

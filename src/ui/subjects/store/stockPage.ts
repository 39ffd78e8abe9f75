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

/** What the lots come to. */
export function stockHeadline(state: State): string | undefined {
	const rows = rowsOf(state.plan, stockSheet);
	if (rows.length === 0) return undefined;
	// A lot that has not come has a remark too, and no day of a count.
	const remarked = rows.filter((row) => wordIn(row.remark) !== "");
	const count = remarked.filter((row) => wordIn(row.last_counted) !== "").length;
	const coming = remarked.length - count;
	const wasted = rows.filter((row) => (numberIn(row.wasted) ?? 0) > 0);
	const names = listed(
		wasted.map((row) => `${wordIn(row.item)} ${wordIn(row.lot)}`),
		MOST_NAMED,
	);
	const waste =
		wasted.length === 0 ? say`nothing will go to waste` : say`part will go to waste: ${names}`;
	const parts = [
		say`${counted(rows.length, "lot")} in the books`,
		coming > 0 && say`${coming} of them on the way`,
		waste,
		count > 0 && say`${counted(count, "lot")} to count again`,
	];
	return parts.filter(Boolean).join(semicolon);
}

import { storeBooks } from "../../../core/edit/store/storeBooks.ts";
import { isComing, lotsOnHand } from "../../../core/plan/store/lotsOnHand.ts";
import { readToday } from "../../../core/plan/today/readToday.ts";
import { say } from "../../../core/say.ts";
import { lotsSheet } from "../../../core/sheets/lots.ts";
import { counted } from "../../format/counted.ts";
import type { SheetPage } from "../../page.ts";
import type { State } from "../../state/store.ts";
import { unitSetting } from "../../state/unitSetting.ts";
import { countSheets } from "./countSheets.ts";
import { storeCautions } from "./storeCautions.ts";

/** The lots that came or are on the way. */
export const lotsPage: SheetPage = {
	sheet: lotsSheet,
	headline: lotsHeadline,
	cautions: storeCautions,
	prints: countSheets,
};

function lotsHeadline(state: State): string | undefined {
	const books = storeBooks(state.workbook);
	const { lots } = books;
	const firstDay = unitSetting(state, "plan_start");
	if (lots.rows.length === 0 || firstDay === undefined) return undefined;
	const coming = lotsOnHand(readToday(state.workbook, state.today)).filter(isComing).length;
	return say`${counted(lots.rows.length - coming, "lot")} in the store, ${coming} on the way`;
}

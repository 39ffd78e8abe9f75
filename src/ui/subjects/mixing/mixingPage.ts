import { rowsOf } from "../../../core/plan/rowsOf.ts";
import { say } from "../../../core/say.ts";
import { mixingSheet } from "../../../core/sheets/mixing.ts";
import { amountOf } from "../../format/amountOf.ts";
import { EXACT } from "../../format/litreWords.ts";
import { shownNumber } from "../../format/shownNumber.ts";
import type { SheetPage } from "../../page.ts";
import { numberIn, wordIn } from "../../state/numberIn.ts";
import type { State } from "../../state/store.ts";
import { unitSetting } from "../../state/unitSetting.ts";
import { firstAidOut } from "./firstAidPage.ts";
import { mixingCautions } from "./mixingCautions.ts";
import { mixingSheetOut } from "./mixingSheetOut.ts";
import { mixingView } from "./mixingView.ts";

/** How to mix the solution. */
export const mixingPage: SheetPage = {
	sheet: mixingSheet,
	tellsTruths: true,
	headline: mixingHeadline,
	over: mixingView,
	cautions: mixingCautions,
	prints: [mixingSheetOut, firstAidOut],
};

function mixingHeadline(state: State): string | undefined {
	const row = rowsOf(state.plan, mixingSheet).find(
		(r) => numberIn(r.product_quantity) !== undefined,
	);
	const quantity = numberIn(row?.product_quantity);
	const water = numberIn(row?.water_litres);
	const litres = numberIn(row?.litres);
	if (quantity === undefined || water === undefined || litres === undefined) return undefined;
	const amount = amountOf(quantity, wordIn(row?.product_measure), EXACT);
	const [first, all] = [shownNumber(water, 2), shownNumber(litres, 1)];
	return unitSetting(state, "solution_water") === "boiled"
		? say.safety`${first} L of boiled, cooled water, then ${amount} of ${wordIn(row?.product)}: ${all} L`
		: say.safety`${first} L of water, then ${amount} of ${wordIn(row?.product)}: ${all} L`;
}

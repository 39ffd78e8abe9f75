import { rowsOf } from "../../../core/plan/rowsOf.ts";
import { say } from "../../../core/say.ts";
import { supplyUseSheet } from "../../../core/sheets/supplyUse.ts";
import { counted } from "../../format/counted.ts";
import type { SheetPage } from "../../page.ts";
import { daysOf } from "../../state/daysOf.ts";
import { numberIn } from "../../state/numberIn.ts";
import type { State } from "../../state/store.ts";

/** What the plan uses up. */
export const supplyUsePage: SheetPage = {
	sheet: supplyUseSheet,
	headline: useHeadline,
};

function useHeadline(state: State): string | undefined {
	const rows = rowsOf(state.plan, supplyUseSheet);
	if (rows.length === 0) return undefined;
	const used = rows.filter((row) => (numberIn(row.set_aside) ?? 0) > 0).length;
	const days = daysOf(state).length;
	return say`Fetch ${counted(used, "item")} for ${counted(days, "day")}`;
}

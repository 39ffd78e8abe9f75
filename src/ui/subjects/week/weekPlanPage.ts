import { rowsOf } from "../../../core/plan/rowsOf.ts";
import { say } from "../../../core/say.ts";
import { weekPlanSheet } from "../../../core/sheets/weekPlan.ts";
import { counted } from "../../format/counted.ts";
import { shownDay } from "../../format/shownDay.ts";
import type { SheetPage } from "../../page.ts";
import { numberIn, wordIn } from "../../state/numberIn.ts";
import type { State } from "../../state/store.ts";
import { weeksView } from "./weeksView.ts";

/** A month or a year in one view: a line a week, a small picture a measure. */
export const weekPlanPage: SheetPage = {
	sheet: weekPlanSheet,
	headline: weeksHeadline,
	over: weeksView,
};

function weeksHeadline(state: State): string | undefined {
	const rows = rowsOf(state.plan, weekPlanSheet);
	const kits = rows.map((row) => numberIn(row.kits_to_reprocess_set_aside));
	if (rows.length < 2 || kits.includes(undefined)) return undefined;
	const most = Math.max(...kits.map((count) => count ?? 0));
	const [first] = rows.filter((_, at) => kits[at] === most);
	return say`${counted(rows.length, "week")}; the busiest from ${shownDay(wordIn(first?.from))}: ${counted(most, "kit")} to reprocess`;
}

import { el } from "../../dom/el.ts";
import { SemanticTable } from "../../grid/library/semanticTable.ts";
import { paperForm } from "../../print/paperForm.ts";
import { printedFoot } from "../../print/printedHead.ts";
import type { State } from "../../state/store.ts";
import { tonightList } from "../water/tonightList.ts";
import { dayCautions } from "../week/dayCautions.ts";
import { weekGrid } from "../week/weekGrid.ts";
import { weekHeadline } from "../week/weekHeadline.ts";
import { weekNotes } from "../week/weekPage.ts";
import { isStartedFor, type ShownWeek, weeksOf } from "../week/weeksOf.ts";

/** The plan upright, a week a page, to go with other papers in one job; what to look out for stands on the last. */
export function planPapers(state: State): HTMLElement[] {
	return weeksOf(state).map((week) => page(state, week));
}

function page(state: State, week: ShownWeek): HTMLElement {
	const table = new SemanticTable();
	table.show(weekGrid(state, week));
	const isLast = week.at === week.of - 1;
	const notes = isLast
		? weekNotes(state, async () => {}, week)
		: [tonightList(state, isStartedFor(week))];
	return paperForm(
		state,
		"plan-paper",
		{ title: weekHeadline(state), cautions: dayCautions, end: printedFoot() },
		el("div", { class: "as-table" }, table.element),
		el("div", { class: "under" }, ...notes),
	);
}

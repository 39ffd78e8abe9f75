import { say } from "../../../core/say.ts";
import { el } from "../../dom/el.ts";
import { SemanticTable } from "../../grid/library/semanticTable.ts";
import type { PrintOut } from "../../page.ts";
import { paperForm } from "../../print/paperForm.ts";
import { printedFoot } from "../../print/printedHead.ts";
import { truthsOnPaper } from "../../sheet/truthsPart.ts";
import type { State } from "../../state/store.ts";
import { tonightList } from "../water/tonightList.ts";
import { dayCautions } from "./dayCautions.ts";
import { weekGrid } from "./weekGrid.ts";
import { weekHeadline } from "./weekHeadline.ts";
import { weekName } from "./weekName.ts";
import { isStartedFor, type ShownWeek, weeksOf } from "./weeksOf.ts";

/** Every week of the plan, a page each. */
export const everyWeekOut: PrintOut = {
	name: say`Print every week`,
	pages: (state) => weeksOf(state).map((week) => weekPaper(state, week)),
};

/** One week of the plan on a page: its days across, and room to write and to sign. */
export function weekPaper(state: State, week: ShownWeek): HTMLElement {
	const table = new SemanticTable();
	table.show(weekGrid(state, week));
	return paperForm(
		state,
		"week-paper",
		{
			way: "lying",
			title: weekHeadline(state),
			when: weekName(week),
			cautions: dayCautions,
			end: printedFoot(),
		},
		truthsOnPaper(state),
		week.of > 1 && el("p", { class: "paper-small" }, say`Week ${week.at + 1} of ${week.of}`),
		table.element,
		tonightList(state, isStartedFor(week)),
	);
}

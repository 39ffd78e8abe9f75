import { type Child, el } from "../../dom/el.ts";
import type { GridPage, Surroundings } from "../../page.ts";
import { cautionList } from "../../sheet/cautionList.ts";
import { problemList } from "../../sheet/problemList.ts";
import type { State } from "../../state/store.ts";
import { noneReadyLine } from "../today/whenNoneReady.ts";
import { tonightList } from "../water/tonightList.ts";
import { dayCautions } from "./dayCautions.ts";
import { farSaferPart } from "./farSaferPart.ts";
import { weekCells } from "./weekCells.ts";
import { weekHeadline } from "./weekHeadline.ts";
import { isStartedFor, type ShownWeek, shownWeek } from "./weeksOf.ts";
import { weekTurner } from "./weekTurner.ts";
import { weekWords } from "./weekWords.ts";

/** The plan, and under it what to put right, what to start tonight and the cautions. */
export const weekPage: GridPage = {
	cells: weekCells,
	tellsTruths: true,
	headline: weekHeadline,
	aboutNow: weekWords,
	turner: weekTurner,
	under(state, goTo) {
		const week = shownWeek(state);
		return week ? weekNotes(state, goTo, week) : [problemList(state.plan.problems, goTo)];
	},
};

/** What stands under the plan of a week. */
export function weekNotes(state: State, goTo: Surroundings["goTo"], week: ShownWeek): Child[] {
	return [
		el(
			"div",
			{ class: "under-list" },
			problemList(state.plan.problems, goTo),
			tonightList(state, isStartedFor(week)),
			state.plan.made && farSaferPart(state),
		),
		el("div", {}, cautionList(dayCautions), noneReadyLine(state)),
	];
}

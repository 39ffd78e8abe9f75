import { el } from "../../dom/el.ts";
import type { GridPage } from "../../page.ts";
import { cautionList } from "../../sheet/cautionList.ts";
import { problemList } from "../../sheet/problemList.ts";
import { noneReadyLine } from "../today/whenNoneReady.ts";
import { tonightList } from "../water/tonightList.ts";
import { dayCautions } from "./dayCautions.ts";
import { farSaferPart } from "./farSaferPart.ts";
import { weekCells } from "./weekCells.ts";
import { weekHeadline } from "./weekHeadline.ts";
import { isStartedFor, shownWeek } from "./weeksOf.ts";
import { weekTurner } from "./weekTurner.ts";
import { weekWords } from "./weekWords.ts";

/** The plan, and under it what to put right, what to start tonight and the cautions. */
export const weekPage: GridPage = {
	cells: weekCells,
	headline: weekHeadline,
	aboutNow: weekWords,
	turner: weekTurner,
	under(state, goTo) {
		const week = shownWeek(state);
		return [
			el(
				"div",
				{ class: "under-list" },
				problemList(state.plan.problems, goTo),
				week && tonightList(state, isStartedFor(week)),
				state.plan.made && farSaferPart(state),
			),
			el("div", {}, cautionList(dayCautions), noneReadyLine(state)),
		];
	},
};

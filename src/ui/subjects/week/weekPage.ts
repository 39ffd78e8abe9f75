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
import { weekWords } from "./weekWords.ts";

/** The plan, and under it what to put right, what to start tonight and the cautions. */
export const weekPage: GridPage = {
	cells: weekCells,
	headline: weekHeadline,
	aboutNow: weekWords,
	under: (state, goTo) => [
		el(
			"div",
			{ class: "under-list" },
			problemList(state.plan.problems, goTo),
			tonightList(state),
			state.plan.made && farSaferPart(state),
		),
		el("div", {}, cautionList(dayCautions), noneReadyLine(state)),
	],
};

import type { Place } from "../../core/problem.ts";
import { say } from "../../core/say.ts";
import { type Child, el } from "../dom/el.ts";
import { THIS_WEEK } from "../shell/pageTitles.ts";
import type { State } from "../state/store.ts";
import { tonightList } from "../subjects/water/tonightList.ts";
import { cautionList } from "./cautions.ts";
import { cautionsOf } from "./cautionWords.ts";
import { problemList } from "./problemList.ts";

/** The cautions of a sheet, where it has any. */
export function sheetCautions(file: string): Child {
	const cautions = cautionsOf(file);
	return cautions.length > 0 && cautionList(cautions);
}

/** What stands under a grid: what to put right, and under the plan what to start tonight and the cautions. */
export function sheetNotes(state: State, file: string, goTo: (place: Place) => void): Child[] {
	const { problems } = state.plan;
	if (file === THIS_WEEK)
		return [
			el("div", { class: "under-list" }, problemList(problems, goTo), tonightList(state)),
			sheetCautions(file),
		];
	const own = problems.filter((problem) => problem.file === file);
	return [
		el(
			"div",
			{ class: "under-list" },
			own.length > 0 && problemList(own, goTo, say`On this sheet`),
		),
	];
}

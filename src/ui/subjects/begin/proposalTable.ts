import { stepsFor } from "../../../core/edit/begin/stepsEntry.ts";
import { say } from "../../../core/say.ts";
import { stepsSheet } from "../../../core/sheets/steps.ts";
import type { Workbook } from "../../../core/workbook.ts";
import { el } from "../../dom/el.ts";
import { shownPlain } from "../../format/shownNumber.ts";
import { waitsFor } from "../../format/waitsFor.ts";
import { sourceWords } from "../../sheet/sourceWords.ts";

const { step, basis, minutes, hands_on } = stepsSheet.columns;
const counted = { round: say`once a round`, kit: say`for each kit`, load: say`for each load` };

/** The proposed steps with their minutes and where they come from, to be read before they are taken. */
export function proposalTable(workbook: Workbook): HTMLElement {
	const proposed = stepsFor(workbook);
	if (!proposed.ok) return el("p", { class: "reason" }, waitsFor(proposed));
	const steps = proposed.value;
	const sourced = [...new Set(steps.map(({ source }) => source))].filter(
		({ mark }) => mark !== "common practice, no source",
	);
	const head = (words: string, numeric = false) =>
		el("th", { scope: "col", class: numeric ? "numeric" : undefined }, words);
	return el(
		"details",
		{ class: "proposal", open: true },
		el("summary", {}, say`The steps proposed`),
		el(
			"table",
			{ class: "brief" },
			el(
				"thead",
				{},
				el(
					"tr",
					{},
					head(step.label),
					head(basis.label),
					head(minutes.label, true),
					head(hands_on.label),
				),
			),
			el(
				"tbody",
				{},
				...steps.map((each) =>
					el(
						"tr",
						{},
						el("th", { scope: "row" }, each.step),
						el("td", {}, counted[each.basis]),
						el("td", { class: "numeric" }, shownPlain(each.minutes)),
						el("td", {}, each.hands_on === "yes" ? say`yes` : say`no`),
					),
				),
			),
		),
		el(
			"p",
			{ class: "source" },
			say`Order and steps: common practice, no source; older handbooks soak before cleaning. Minutes: estimates, rather too long than too short. What has a source:`,
		),
		...sourced.map((source) => el("p", { class: "source" }, ...sourceWords(source))),
	);
}

import { say } from "../../../core/say.ts";
import { el } from "../../dom/el.ts";
import { headLine } from "../../print/headLine.ts";
import { planDays } from "../../print/planDays.ts";
import type { State } from "../../state/store.ts";
import { unitSetting } from "../../state/unitSetting.ts";

/** Two across and three down fit both A4 and Letter. */
const ON_A_SHEET = 6;

/** Sheets of paper that so many labels take. */
export function sheetsFor(labels: number): number {
	return Math.ceil(labels / ON_A_SHEET);
}

/** Labels laid out on sheets to cut; the cut lines are the labels' borders. */
export function labelSheets(state: State, labels: readonly HTMLElement[]): HTMLElement[] {
	const count = sheetsFor(labels.length);
	return Array.from({ length: count }, (_, sheet) =>
		el(
			"section",
			{ class: "form-frame" },
			el(
				"div",
				{ class: "form-head" },
				headLine(unitSetting(state, "unit_name") ?? "", planDays(state)),
				el(
					"p",
					{ class: "label-sheet-head" },
					say`Labels, sheet ${sheet + 1} of ${count}. Cut along the dashed lines.`,
				),
			),
			el(
				"div",
				{ class: "form-body" },
				el(
					"div",
					{ class: "label-grid" },
					...labels.slice(sheet * ON_A_SHEET, (sheet + 1) * ON_A_SHEET),
				),
			),
		),
	);
}

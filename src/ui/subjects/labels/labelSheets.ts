import { say } from "../../../core/say.ts";
import { el } from "../../dom/el.ts";
import { notReviewed } from "../../shell/notReviewed.ts";

/** Two across and three down fit both A4 and Letter. */
const ON_A_SHEET = 6;

/** Sheets of paper that so many labels take. */
export function sheetsFor(labels: number): number {
	return Math.ceil(labels / ON_A_SHEET);
}

/** Labels laid out on sheets to cut; the cut lines are the labels' borders. */
export function labelSheets(labels: readonly HTMLElement[], unit: string): HTMLElement[] {
	const count = sheetsFor(labels.length);
	return Array.from({ length: count }, (_, sheet) =>
		el(
			"section",
			{ class: "label-sheet" },
			el(
				"p",
				{ class: "label-sheet-head" },
				say`${unit}. Labels, sheet ${sheet + 1} of ${count}. Cut along the dashed lines. Basinbook ${document.body.dataset.version ?? ""}`,
				" ",
				notReviewed,
			),
			el(
				"div",
				{ class: "label-grid" },
				...labels.slice(sheet * ON_A_SHEET, (sheet + 1) * ON_A_SHEET),
			),
		),
	);
}

import type { Place } from "../../core/problem.ts";
import { say } from "../../core/say.ts";
import { el, fill } from "../dom/el.ts";
import type { GridCell } from "../grid/gridModel.ts";
import { entryPane } from "./entryPane.ts";
import { whyPane } from "./whyPane.ts";

/** What a person can do from the margin beside the grid. */
export interface PaneActs {
	write(text: string): void;
	goTo(place: Place): void;
}

/**
 * About the selected cell: a typed one can be filled in here, and a computed one says why
 * it is what it is. Where the plan says something beneath a typed text, that is explained too.
 */
export function cellPane(
	pane: HTMLElement,
	onTypedSheet: boolean,
	cell: GridCell | undefined,
	{ write, goTo }: PaneActs,
): void {
	const figures = cell?.figures?.length ? cell.figures : undefined;
	if (cell?.kind === "typed") {
		const entry = el("div", {});
		const why = el("div", { class: "also" });
		fill(pane, entry, why);
		entryPane(entry, cell, write);
		if (figures) whyPane(why, figures, goTo);
	} else if (figures) whyPane(pane, figures, goTo);
	else
		fill(
			pane,
			el(
				"p",
				{ class: "hint" },
				onTypedSheet
					? say`Select a cell to see what it is for and what it may hold.`
					: say`Select a cell to see how its number comes about.`,
			),
		);
}

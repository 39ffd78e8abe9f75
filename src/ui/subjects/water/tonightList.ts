import type { ComputedRow } from "../../../core/computedTable.ts";
import { rowsOf } from "../../../core/plan/rowsOf.ts";
import { say } from "../../../core/say.ts";
import { tonightSheet } from "../../../core/sheets/tonight.ts";
import type { IsoDate } from "../../../core/values/date.ts";
import { el } from "../../dom/el.ts";
import { computedGrid } from "../../grid/computedGrid.ts";
import { wordIn } from "../../state/numberIn.ts";
import type { State } from "../../state/store.ts";

type Line = ComputedRow<typeof tonightSheet>;

/**
 * What to start on an evening for the next day's rounds, in words, under the plan.
 *
 * @param isShown whether what is done on a day is listed
 */
export function tonightList(
	state: State,
	isShown: (date: IsoDate) => boolean,
): HTMLElement | undefined {
	const lines = rowsOf(state.plan, tonightSheet).filter(({ date }) => isShown(wordIn(date)));
	if (lines.length === 0) return undefined;
	return el(
		"section",
		{ class: "tonight" },
		el("h2", {}, say`Start tonight`),
		listed(lines, 4, say`The rest is on its own sheet, “Start tonight”.`),
	);
}

/** The same beside the sheet itself, for a phone, whose width cuts the sentences in its cells. */
export function tonightOnPhone(state: State): HTMLElement | undefined {
	const lines = rowsOf(state.plan, tonightSheet);
	if (lines.length === 0) return undefined;
	const list = listed(lines, 6, say`The rest is in the sheet above.`);
	return el("div", { class: "tonight on-phone" }, list);
}

function listed(lines: readonly Line[], most: number, rest: string): HTMLElement {
	const cells = computedGrid({ sheet: tonightSheet, rows: lines.slice(0, most) });
	const shown = lines.slice(0, most).map((_, row) => {
		const [day = "", by = "", what = "", goal = ""] = cells.columns.map(
			(_column, at) => cells.cell(row, at).text,
		);
		return el(
			"li",
			{},
			el("strong", {}, say`${day}, by ${by}`),
			` ${what}`,
			el("span", { class: "unit" }, ` (${goal})`),
		);
	});
	return el("ul", {}, ...shown, lines.length > most && el("li", {}, rest));
}

import { rowsOf } from "../../../core/plan/rowsOf.ts";
import { say } from "../../../core/say.ts";
import { tonightSheet } from "../../../core/sheets/tonight.ts";
import type { IsoDate } from "../../../core/values/date.ts";
import { el } from "../../dom/el.ts";
import { computedGrid } from "../../grid/computedGrid.ts";
import { wordIn } from "../../state/numberIn.ts";
import type { State } from "../../state/store.ts";

const MOST_SHOWN = 4;

/**
 * What to start on an evening for the next day's rounds, in words, under the plan.
 *
 * @param isShown whether what is done on a day is listed
 */
export function tonightList(
	state: State,
	isShown: (date: IsoDate) => boolean,
): HTMLElement | undefined {
	const rows = rowsOf(state.plan, tonightSheet).filter(({ date }) => isShown(wordIn(date)));
	if (rows.length === 0) return undefined;
	const cells = computedGrid({ sheet: tonightSheet, rows });
	const lines = rows.slice(0, MOST_SHOWN).map((_, row) => {
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
	const more =
		rows.length > MOST_SHOWN && el("li", {}, say`The rest is on its own sheet, “Start tonight”.`);
	return el(
		"section",
		{ class: "tonight" },
		el("h2", {}, say`Start tonight`),
		el("ul", {}, ...lines, more),
	);
}

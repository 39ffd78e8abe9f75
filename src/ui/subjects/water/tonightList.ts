import { say } from "../../../core/say.ts";
import { tonightSheet } from "../../../core/sheets/tonight.ts";
import { el } from "../../dom/el.ts";
import { computedGrid } from "../../grid/computedGrid.ts";
import type { State } from "../../state/store.ts";

const MOST_SHOWN = 4;

/** What to start on an evening for the next day's rounds, in words, under the plan. */
export function tonightList(state: State): HTMLElement | undefined {
	const table = state.plan.tables[tonightSheet.file];
	if (!table || table.rows.length === 0) return undefined;
	const cells = computedGrid(table);
	const lines = table.rows.slice(0, MOST_SHOWN).map((_, row) => {
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
		table.rows.length > MOST_SHOWN &&
		el("li", {}, say`The rest is on its own sheet: the night before.`);
	return el(
		"section",
		{ class: "tonight" },
		el("h2", {}, say`The night before`),
		el("ul", {}, ...lines, more),
	);
}

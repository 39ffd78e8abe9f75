import { nameFigure } from "../../calculation.ts";
import type { ComputedRow } from "../../computedTable.ts";
import { cellFigure } from "../../read/cellFigure.ts";
import type { ReadWorkbook } from "../../read/readWorkbook.ts";
import { say } from "../../say.ts";
import { itemsSheet } from "../../sheets/items.ts";
import { journalSheet } from "../../sheets/journal.ts";
import type { monthSheet } from "../../sheets/month.ts";
import type { IsoDate } from "../../values/date.ts";
import { recorded } from "./recordedDays.ts";

/** What was issued of each item over some days, by the journal of the store. */
export function itemRows(
	{ tables }: ReadWorkbook,
	days: readonly IsoDate[],
): ComputedRow<typeof monthSheet>[] {
	return tables.items.rows.map((item) => {
		const { item: name, measure } = item.value;
		const entries = tables.journal.rows.filter(({ value }) => value.item === name);
		const { done, note } = recorded(
			say`Issued`,
			measure,
			days,
			entries
				.filter(({ value }) => value.entry === "issue")
				.map((row) => ({
					day: row.value.day,
					name: String(row.line),
					figure: cellFigure(journalSheet, row, "quantity"),
				})),
			entries.map(({ value }) => value.day),
		);
		return {
			measure: cellFigure(itemsSheet, item, "item"),
			unit: cellFigure(itemsSheet, item, "measure"),
			planned_expected: nameFigure(say`Planned, expected`, null),
			planned_set_aside: nameFigure(say`Planned, set aside`, null),
			done: done ?? nameFigure(say`Done`, null),
			note: nameFigure(say`Note`, note),
		};
	});
}

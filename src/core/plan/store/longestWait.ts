import { derive, type Figure, gather } from "../../calculation.ts";
import { cellFigure } from "../../read/cellFigure.ts";
import type { GoodRow } from "../../read/goodRow.ts";
import { say } from "../../say.ts";
import { type ItemsRow, itemsSheet } from "../../sheets/items.ts";
import { total } from "../../total.ts";

const waited = total("longest_wait", say`Days from order to delivery, at the longest`, say`days`);

/**
 * Days from order to delivery that the store is planned for: the usual ones, and as many
 * more as a delivery is late now and then. With no spread the usual ones stand as typed.
 */
export function longestWait(row: GoodRow<ItemsRow>): Figure {
	const usual = cellFigure(itemsSheet, row, "lead_days");
	if (row.value.lead_days_spread === 0) return usual;
	const late = cellFigure(itemsSheet, row, "lead_days_spread");
	return derive(waited, { parts: gather(say`Parts`, say`days`, { usual, late }) });
}

/** The same as a number. */
export function longestWaitDays({ lead_days, lead_days_spread }: ItemsRow): number {
	return lead_days + lead_days_spread;
}

import { readTable } from "../read/readTable.ts";
import { recordsSheet } from "../sheets/records.ts";
import { addDays, DAYS_PER_WEEK, type IsoDate } from "../values/date.ts";
import type { Workbook } from "../workbook.ts";

/**
 * The days that the register goes on with: those of its last seven that nobody entered,
 * then the days after its last one. None where it has no day yet.
 *
 * @param count how many
 */
export function nextDays(workbook: Workbook, count: number): IsoDate[] {
	const { rows } = readTable(recordsSheet, workbook.tables[recordsSheet.file]);
	const entered = new Set(rows.map(({ value }) => value.date));
	const inOrder = [...entered].sort();
	const [first] = inOrder;
	if (first === undefined) return [];
	const last = inOrder.at(-1) as IsoDate;
	const days: IsoDate[] = [];
	for (let day = addDays(last, 1 - DAYS_PER_WEEK); days.length < count; day = addDays(day, 1))
		if (day > first && !entered.has(day)) days.push(day);
	return days;
}

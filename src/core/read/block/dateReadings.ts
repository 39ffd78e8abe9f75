import { dayNumber } from "../../values/date.ts";
import { dateForms } from "../../values/dateForms.ts";
import type { BlockCell } from "./blockTable.ts";
import type { TwoReadings } from "./twoReadings.ts";

const MOMENT = /^(\S+)(?:[ T]+(.+))?$/;
/** What programs add to a day that they keep as a moment. */
const MIDNIGHT = /^0?0:00(:00)?$/;
const isSame = (one: string, other: string) => one === other;

/** A cell of a day, or of a day and time, with the day (first) and the month (second) in front. */
export function dateReadings(cell: BlockCell, near: number | undefined): TwoReadings[] {
	const { written } = cell.column.value;
	if (written !== "date" && written !== "dateTime") return [];
	const [, day = cell.text, time = ""] = MOMENT.exec(cell.text.trim()) ?? [];
	const isMidnight = written === "date" && MIDNIGHT.test(time);
	if (dayNumber(day) !== undefined)
		return isMidnight ? [{ cell, first: day, second: day, isSame }] : [];
	if (written === "date" && time !== "" && !isMidnight) return [];
	const { dayFirst, monthFirst } = dateForms(day, near);
	const withTime = (date: string | undefined) =>
		date !== undefined && time !== "" && written === "dateTime" ? `${date} ${time}` : date;
	return [{ cell, first: withTime(dayFirst), second: withTime(monthFirst), isSame }];
}

/** A year that the block names in full, by which a year of two digits is understood. */
export function yearIn(cells: readonly BlockCell[]): number | undefined {
	for (const { text, column } of cells) {
		if (column.value.written !== "date" && column.value.written !== "dateTime") continue;
		const year = /(?<!\d)(19|20|21)\d\d(?!\d)/.exec(text)?.[0];
		if (year !== undefined) return Number(year);
	}
	return undefined;
}

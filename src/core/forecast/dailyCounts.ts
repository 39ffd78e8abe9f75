import { dayNumber, type IsoDate, isoDate } from "../values/date.ts";

/** A day of the register; null births where they were not recorded. */
interface RecordedDay {
	readonly date: IsoDate;
	readonly births: number | null;
}

/** The register day by day without gaps: null where nothing was recorded. */
export interface DailyCounts {
	readonly firstDay: IsoDate;
	readonly counts: readonly (number | null)[];
}

/** More days between two records than this are two registers, not one with a gap. */
const LONGEST_SPAN_DAYS = 40_000;

/** Births in the order of the calendar; days without a row or with a blank are missing, not zero. */
export function dailyCounts(
	days: readonly RecordedDay[],
	before: IsoDate,
): DailyCounts | undefined {
	const recorded = new Map<number, number>();
	for (const { date, births } of days)
		if (births !== null && date < before) recorded.set(dayNumber(date) as number, births);
	if (recorded.size === 0) return undefined;
	const numbers = [...recorded.keys()].sort((a, b) => a - b);
	const last = numbers.at(-1) as number;
	const first = Math.max(numbers[0] as number, last - LONGEST_SPAN_DAYS);
	const counts = Array.from(
		{ length: last - first + 1 },
		(_, i) => recorded.get(first + i) ?? null,
	);
	return { firstDay: isoDate(first), counts };
}

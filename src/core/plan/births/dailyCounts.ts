import type { GoodRow } from "../../read/rows.ts";
import type { RecordsRow } from "../../sheets/records.ts";
import { dayNumber, type IsoDate, isoDate } from "../../values/date.ts";

/** The register day by day without gaps: null where nothing was recorded. */
export interface DailyCounts {
	readonly firstDay: IsoDate;
	readonly counts: readonly (number | null)[];
}

/** More days between two records than this are two registers, not one with a gap. */
const LONGEST_SPAN_DAYS = 40_000;

/** Births in the order of the calendar; days without a row or with a blank are missing, not zero. */
export function dailyCounts(
	rows: readonly GoodRow<RecordsRow>[],
	before: IsoDate,
): DailyCounts | undefined {
	const recorded = new Map<number, number>();
	for (const { value } of rows)
		if (value.births !== null && value.date < before)
			recorded.set(dayNumber(value.date) as number, value.births);
	if (recorded.size === 0) return undefined;
	const days = [...recorded.keys()].sort((a, b) => a - b);
	const last = days.at(-1) as number;
	const first = Math.max(days[0] as number, last - LONGEST_SPAN_DAYS);
	const counts = Array.from(
		{ length: last - first + 1 },
		(_, i) => recorded.get(first + i) ?? null,
	);
	return { firstDay: isoDate(first), counts };
}

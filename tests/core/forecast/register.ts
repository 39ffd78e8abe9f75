import type { DailyCounts } from "../../../src/core/forecast/dailyCounts.ts";
import { addDays } from "../../../src/core/values/date.ts";

/** Records of days that follow each other, a blank for null, as the text of records.csv. */
export function recordsOf(firstDay: string, counts: readonly (number | string | null)[]): string {
	const rows = counts.map((count, day) => `${addDays(firstDay, day)},${count ?? ""},`);
	return ["date,births,kits_used", ...rows].join("\n");
}

/** Days in a row, the first a Monday. */
export function register(...counts: (number | null)[]): DailyCounts {
	return { firstDay: "2027-01-04", counts };
}

/** The same days over and over. */
export function repeated<T>(days: readonly T[], times: number): T[] {
	return Array.from({ length: times }, () => days).flat();
}

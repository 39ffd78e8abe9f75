import { calculation } from "../calculation.ts";
import { say } from "../say.ts";
import { definition } from "../source.ts";
import { addDays, dayNumber, type IsoDate, isoDate } from "../values/date.ts";

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

/** Births in the order of the calendar; days without a row or with a blank are missing, not zero. @param from the first day wanted; all where left out */
export function dailyCounts(
	days: readonly RecordedDay[],
	before: IsoDate,
	from: IsoDate = "",
): DailyCounts | undefined {
	const recorded = new Map<number, number>();
	for (const { date, births } of days)
		if (births !== null && date < before && date >= from)
			recorded.set(dayNumber(date) as number, births);
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

interface SinceInputs {
	readonly register: DailyCounts;
	readonly from: IsoDate | null;
}

/** The register from a day on; null where nothing of it is left. */
export const registerSince = calculation<SinceInputs, DailyCounts | null>({
	key: "register_since",
	label: say`Births in the register`,
	unit: say`births/day`,
	formula: say`The recorded days from the day on from which births are learned; days before it are kept and not used.`,
	source: definition,
	inputs: {
		register: { label: say`Births in the register`, unit: say`births/day` },
		from: { label: say`Learn births from`, unit: "" },
	},
	example: {
		inputs: {
			register: { firstDay: "2027-02-26", counts: [4, 5, 9, null, 8] },
			from: "2027-02-28",
		},
		result: { firstDay: "2027-02-28", counts: [9, null, 8] },
		within: 0,
	},
	compute: ({ register: { firstDay, counts }, from }) =>
		dailyCounts(
			counts.map((births, day) => ({ date: addDays(firstDay, day), births })),
			addDays(firstDay, counts.length),
			from ?? firstDay,
		) ?? null,
});

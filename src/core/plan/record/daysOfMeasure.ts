import type { ReadTables } from "../../read/readWorkbook.ts";
import type { Measure } from "../../sheets/planMeasures.ts";
import type { IsoDate } from "../../values/date.ts";
import { keptPlans } from "./keptPlans.ts";

/** What is known of one measure on one day. */
export interface DayOfMeasure {
	readonly date: IsoDate;
	/** Undefined where the day is not recorded, which is not 0. */
	readonly done: number | undefined;
	/** By the plan that was kept; undefined where none was, or where it did not say. */
	readonly expected: number | undefined;
	readonly setAside: number | undefined;
}

/** Every day, planned and recorded or not. */
export function daysOfMeasure(
	tables: ReadTables,
	measure: Measure,
	days: readonly IsoDate[],
	doneOn: ReadonlyMap<IsoDate, number>,
): DayOfMeasure[] {
	const planned = keptPlans(tables)(measure);
	return days.map((date) => {
		const plan = planned.get(date)?.value;
		return {
			date,
			done: doneOn.get(date),
			expected: plan?.expected ?? undefined,
			setAside: plan?.set_aside ?? undefined,
		};
	});
}

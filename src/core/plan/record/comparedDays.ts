import type { ReadTables } from "../../read/readWorkbook.ts";
import type { Measure } from "../../sheets/planMeasures.ts";
import type { IsoDate } from "../../values/date.ts";
import { keptPlans } from "./keptPlans.ts";

/** One day for which a plan was kept and something was recorded. */
export interface ComparedDay {
	readonly date: IsoDate;
	readonly done: number;
	readonly expected: number | null;
	readonly setAside: number | null;
}

/** The days on which a measure can be compared: its plan was kept and it was recorded. Only they say whether a plan was good. */
export function comparedDays(
	tables: ReadTables,
	measure: Measure,
	days: readonly IsoDate[],
	doneOn: ReadonlyMap<IsoDate, number>,
): ComparedDay[] {
	const planned = keptPlans(tables)(measure);
	return days.flatMap((date) => {
		const plan = planned.get(date)?.value;
		const done = doneOn.get(date);
		if (!plan || done === undefined) return [];
		return [{ date, done, expected: plan.expected, setAside: plan.set_aside }];
	});
}

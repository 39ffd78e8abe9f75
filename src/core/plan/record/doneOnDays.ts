import type { ReadWorkbook } from "../../read/readWorkbook.ts";
import { type MonthMeasure, monthMeasures } from "../../sheets/month.ts";
import type { IsoDate } from "../../values/date.ts";
import { kitsUsedOn } from "./kitsUsedByDay.ts";
import { measuresDone } from "./measuresDone.ts";

type DoneOnDays = Readonly<Record<MonthMeasure, ReadonlyMap<IsoDate, number>>>;

/** What was done on each of some days of which it is known, to be held against the plan of the same days. */
export function doneOnDays(read: ReadWorkbook, days: readonly IsoDate[]): DoneOnDays {
	const done = measuresDone(read, days);
	const byDay = monthMeasures.map((measure) => [measure, done[measure].byDay]);
	return { ...(Object.fromEntries(byDay) as DoneOnDays), kits_used: kitsUsedOn(read, days) };
}

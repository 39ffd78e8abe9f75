import type { IsoDate } from "../values/date.ts";
import type { Measure } from "./planMeasures.ts";

/** What a plan says of one measure on one day; undefined where it says nothing of it. */
export interface PlannedDay {
	readonly date: IsoDate;
	readonly measure: Measure;
	readonly expected: number | undefined;
	readonly setAside: number | undefined;
}

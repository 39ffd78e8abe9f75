import type { IsoDate } from "../../../core/values/date.ts";

let chosen: IsoDate | undefined;

/** The day of the run sheet that the person looks at; the first one until another is chosen. Kept while the page is open. */
export function chosenDay(days: readonly IsoDate[]): IsoDate | undefined {
	return chosen !== undefined && days.includes(chosen) ? chosen : days[0];
}

export function chooseDay(day: IsoDate): void {
	chosen = day;
}

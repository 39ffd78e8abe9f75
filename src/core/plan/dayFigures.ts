import { CountedDay, type CountsOfDay } from "./countedDay.ts";
import type { DayDemand } from "./dayDemand.ts";
import type { UnitFigures } from "./unitFigures.ts";

/** What one day brings, before anything is set aside for it. */
export type DayFigures = DayDemand & CountsOfDay;

/** The demands of days with what follows from them. */
export function withCounts(unit: UnitFigures, days: readonly DayDemand[]): DayFigures[] {
	return days.map((day) => new CountedDay(unit, day));
}

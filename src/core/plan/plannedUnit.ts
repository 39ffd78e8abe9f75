import { memoizeByObject } from "../memoize.ts";
import { answer, type Outcome } from "../outcome.ts";
import type { ReadWorkbook } from "../read/readWorkbook.ts";
import { dayNumber, type IsoDate, isoDate } from "../values/date.ts";
import { dosedForRounds } from "./chlorine/dosedForRounds.ts";
import { lastCounted } from "./countsByNow.ts";
import type { DayDemand } from "./dayDemand.ts";
import { dayDemands } from "./dayDemands.ts";
import { type UnitFigures, unitFigures } from "./unitFigures.ts";

/** A unit over the days of its plan. */
export interface PlannedUnit {
	readonly unit: UnitFigures;
	readonly days: readonly DayDemand[];
	readonly first: IsoDate;
	readonly last: IsoDate;
}

/** The unit with what its days bring, and its solution dosed for them; or why there are no days. */
export const plannedUnit = memoizeByObject((read: ReadWorkbook): Outcome<PlannedUnit> => {
	const dates = datesOf(read);
	if (!dates.ok) return dates;
	const [first, last] = [dates.value[0] as IsoDate, dates.value.at(-1) as IsoDate];
	const unit = unitFigures(read, first, lastCounted(read, last));
	const days = dayDemands(unit, dates.value);
	return answer({ unit: dosedForRounds(unit, days), days, first, last });
});

function datesOf({ settings }: ReadWorkbook): Outcome<IsoDate[]> {
	const { plan_start: start, plan_days: days } = settings;
	if (!start.outcome.ok) return start.outcome;
	if (!days.outcome.ok) return days.outcome;
	const first = dayNumber(start.outcome.value) as number;
	return answer(Array.from({ length: days.outcome.value }, (_, day) => isoDate(first + day)));
}

import { type DayToShow, daysToChoose, dayToShow } from "../../../core/plan/today/dayToShow.ts";
import { type ReadWorkbook, readWorkbook } from "../../../core/read/readWorkbook.ts";
import { say } from "../../../core/say.ts";
import { writeClock } from "../../../core/values/clock.ts";
import { addDays, type IsoDate } from "../../../core/values/date.ts";
import type { LocalTime } from "../../../core/values/dateTime.ts";
import { shownDayAndYear } from "../../format/shownDay.ts";
import { clockNow } from "../../state/clockNow.ts";
import { daysOf } from "../../state/daysOf.ts";
import type { State } from "../../state/store.ts";

/** From when to when the page of today goes, and in which words it says so. */
export interface MomentShown {
	readonly from: LocalTime;
	readonly until: LocalTime;
	/** True where it goes on with the computer's clock. */
	readonly isNow: boolean;
	/** What is written down now is written of this moment. */
	readonly entry: LocalTime;
	readonly days: readonly IsoDate[];
	readonly words: string;
}

/** @param chosen a day that the person looks at; undefined: today */
export function momentShown(
	state: State,
	{ tables }: ReadWorkbook,
	chosen: IsoDate | undefined,
): MomentShown {
	const clock = clockNow();
	const days = daysOf(state);
	const today: DayToShow =
		days.length === 0 ? { day: clock.date, because: "now" } : dayToShow(clock.date, days, tables);
	const isBehind = today.because === "clock_behind";
	const day = chosen ?? today.day;
	const isNow = day === clock.date && !isBehind;
	const from = isNow ? clock : { date: day, minutes: 0 };
	return {
		from,
		until: { date: addDays(day, 1), minutes: from.minutes },
		isNow,
		entry: { date: isBehind ? day : clock.date, minutes: clock.minutes },
		days: isBehind ? daysToChoose(today.day, days) : daysToChoose(clock.date, days),
		words: wordsOf(today, day, clock, days),
	};
}

/** The day that is today for a workbook. */
export function dayShown(state: State): IsoDate {
	return momentShown(state, readWorkbook(state.workbook), undefined).from.date;
}

function wordsOf(
	{ because }: DayToShow,
	day: IsoDate,
	clock: LocalTime,
	days: readonly IsoDate[],
): string {
	const shown = shownDayAndYear(day);
	const today = shownDayAndYear(clock.date);
	const [first, last] = [shownDayAndYear(days[0] ?? ""), shownDayAndYear(days.at(-1) ?? "")];
	if (because === "clock_behind")
		return say`${shown} is shown. This computer's clock says ${today}, which is before the last line of the record: set the clock, or look at days of the plan here. Check the time of everything you write down.`;
	if (day !== clock.date) return say`${shown} is shown from its beginning. Today is ${today}.`;
	const now = say`${shown}, ${writeClock(clock.minutes)}, and the 24 hours after it.`;
	if (because === "over")
		return say`${now} The plan ended on ${last}, so nothing is planned for today: move on under Monday.`;
	if (because === "to_come") return say`${now} The plan begins on ${first}.`;
	return now;
}

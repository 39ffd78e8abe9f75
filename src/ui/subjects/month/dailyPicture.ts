import { type DayOfMeasure, daysOfMeasure } from "../../../core/plan/record/daysOfMeasure.ts";
import { doneOnDays } from "../../../core/plan/record/doneOnDays.ts";
import type { ReadWorkbook } from "../../../core/read/readWorkbook.ts";
import { say } from "../../../core/say.ts";
import type { IsoDate } from "../../../core/values/date.ts";
import type { MonthPicture } from "./monthPicture.ts";
import { pointsTable } from "./pointsTable.ts";
import { type DailyMeasure, spanAnswer } from "./spanAnswer.ts";
import { dayPoints, MOST_DAYS, monthPoints, type SpanPoint } from "./spanPoint.ts";

const words = {
	births: {
		title: say`Births against the plan`,
		byDay: say`births a day`,
		byMonth: say`births a day, mean of the month`,
		band: say`prepared for`,
		reading: say`A dot is the births of a day, the band what was prepared for, the bar the average of the plan; a ring is a day with more than was prepared for. Where the line at the foot is broken, nothing is recorded.`,
	},
	kits_used: {
		title: say`Kits used against the plan`,
		byDay: say`kits used a day`,
		byMonth: say`kits used a day, mean of the month`,
		band: say`by chance`,
		reading: say`A dot is the kits used on a day, the bar the average of the plan, the band what chance alone gives around it on at least 95 of 100 days; a ring is a day above it. Where the line at the foot is broken, nothing is recorded.`,
	},
} as const;

/** Births, or kits used, of each day over what was planned; of many days month by month. */
export function dailyPicture(
	read: ReadWorkbook,
	measure: DailyMeasure,
	days: readonly IsoDate[],
): MonthPicture {
	const known = daysOfMeasure(read.tables, measure, days, doneOnDays(read, days)[measure]);
	const { title, byDay, byMonth: monthly, band, reading } = words[measure];
	const answer = spanAnswer(measure, known);
	if (!known.some(isKnown)) return { title, words: answer };
	const byMonth = days.length > MOST_DAYS;
	const points: readonly SpanPoint[] = byMonth
		? monthPoints(known)
		: dayPoints(known, measure === "births" ? "set_aside" : "by_chance");
	const bandWords = byMonth ? say`by chance` : band;
	return {
		title,
		words: answer,
		reading: byMonth
			? say`A dot is the mean of a day over the days of a month that were planned and recorded (over all that were recorded where none was planned), the bar the average of the plan, the band what chance alone gives around it in 95 of 100 months; a ring is a month above it. A month without a line at the foot is not recorded.`
			: reading,
		draw: ({ spanPicture }, width) =>
			spanPicture(points, { measure: byMonth ? monthly : byDay, band: bandWords, byMonth }, width),
		table: {
			name: byMonth ? say`The numbers, month by month` : say`The numbers, day by day`,
			of: () => pointsTable(title, points, bandWords, byMonth),
		},
	};
}

function isKnown({ done, expected, setAside }: DayOfMeasure): boolean {
	return done !== undefined || expected !== undefined || setAside !== undefined;
}

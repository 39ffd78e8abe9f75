import type { Forecast } from "../../core/forecast/forecast.ts";
import { counted } from "../shown/counted.ts";
import { shownNumber, shownPlain } from "../shown/shownNumber.ts";
import type { DayToCome } from "./daysToCome.ts";

const WEEKDAYS = [
	"Sundays",
	"Mondays",
	"Tuesdays",
	"Wednesdays",
	"Thursdays",
	"Fridays",
	"Saturdays",
];
/** A weekday that differs from the mean day by less than this is like any other. */
const CLEAR_DIFFERENCE = 0.05;

/** How many births to expect, in one line. */
export function forecastHeadline(days: readonly DayToCome[]): string | undefined {
	if (days.length === 0) return undefined;
	const mean = days.reduce((sum, day) => sum + day.expected, 0) / days.length;
	return `About ${shownNumber(mean, 1)} births a day to come; up to ${highest(days)} on most days`;
}

/** Level, weekday pattern, how sure, and whose figures: what the picture shows. */
export function forecastSentence(
	days: readonly DayToCome[],
	forecast: Forecast | undefined,
): string {
	const own = days.filter((day) => day.from === "own").length;
	const low = Math.min(...days.map((day) => day.low90));
	const parts = [
		forecast && level(forecast),
		forecast && pattern(forecast.factors),
		`On nine of ten days births stay inside the pale band, from ${low} to ${highest(days)} over these days; on half of the days inside the dark one.`,
		own > 0 &&
			`${own === 1 ? "One day carries" : `${shownPlain(own)} days carry`} your own figure, marked with a filled corner.`,
		days.some((day) => day.from === "setting") &&
			"Days without a forecast take births a day from the settings.",
	];
	return parts.filter(Boolean).join(" ");
}

function highest(days: readonly DayToCome[]): number {
	return Math.max(...days.map((day) => day.high90));
}

function level({ a, b, recordedDays }: Forecast): string {
	return `The register of ${counted(recordedDays, "day")} puts a mean day at ${shownNumber(a / b, 1)} births.`;
}

/** Says no more of the week than its days show. @param factors Sunday first */
export function pattern(factors: readonly number[]): string {
	const most = factors.indexOf(Math.max(...factors));
	const least = factors.indexOf(Math.min(...factors));
	const clear =
		(factors[most] ?? 1) > 1 + CLEAR_DIFFERENCE || (factors[least] ?? 1) < 1 - CLEAR_DIFFERENCE;
	if (!clear) return "The days of the week hardly differ.";
	return `${WEEKDAYS[most]} bring most (${percent(factors[most])}), ${WEEKDAYS[least]} fewest (${percent(factors[least])}).`;
}

function percent(factor = 1): string {
	const difference = Math.round(100 * (factor - 1));
	return difference < 0 ? `${-difference} % below a mean day` : `${difference} % above a mean day`;
}

import type { Forecast } from "../../../core/forecast/forecast.ts";
import { say } from "../../../core/say.ts";
import { counted } from "../../format/counted.ts";
import { shownDay } from "../../format/shownDay.ts";
import { shownNumber, shownPlain } from "../../format/shownNumber.ts";
import type { DayToCome } from "./daysToCome.ts";

const WEEKDAYS = [
	say`Sundays`,
	say`Mondays`,
	say`Tuesdays`,
	say`Wednesdays`,
	say`Thursdays`,
	say`Fridays`,
	say`Saturdays`,
];
/** A weekday that differs from the mean day by less than this is like any other. */
const CLEAR_DIFFERENCE = 0.05;

/** How many births to expect, and the busiest day, in one line. */
export function forecastHeadline(days: readonly DayToCome[]): string | undefined {
	const [busiest] = [...days].sort((a, b) => b.expected - a.expected);
	if (!busiest) return undefined;
	const mean = days.reduce((sum, day) => sum + day.expected, 0) / days.length;
	const level = shownNumber(mean, 1);
	if (days.length === 1)
		return say`About ${level} births a day to come, at most ${busiest.high90} on nine such days of ten`;
	return say`About ${level} births a day to come; most on ${shownDay(busiest.date)}: ${shownNumber(busiest.expected, 1)}, perhaps ${busiest.high90}`;
}

/** Level, weekday pattern, how sure, and whose figures: what the picture shows. */
export function forecastSentence(
	days: readonly DayToCome[],
	forecast: Forecast | undefined,
): string {
	const own = days.filter((day) => day.source === "own").length;
	const low = Math.min(...days.map((day) => day.low90));
	const parts = [
		forecast && level(forecast),
		forecast && pattern(forecast.factors),
		say`Nine of ten such days stay inside the pale band (from ${low} to ${highest(days)} births over these days), half of them inside the dark one.`,
		own > 0 &&
			(own === 1
				? say`One day carries your own figure, marked with a filled corner.`
				: say`${shownPlain(own)} days carry your own figure, marked with a filled corner.`),
		days.some((day) => day.source === "moved") &&
			say`The register is still short: other days take births a day from the settings, moved by the register.`,
		days.some((day) => day.source === "setting") &&
			say`Days without a forecast take births a day from the settings.`,
	];
	return parts.filter(Boolean).join(" ");
}

function highest(days: readonly DayToCome[]): number {
	return Math.max(...days.map((day) => day.high90));
}

function level({ a, b, recordedDays }: Forecast): string {
	return say`The register of ${counted(recordedDays, "day")} puts a mean day at ${shownNumber(a / b, 1)} births.`;
}

/** Says no more of the week than its days show. @param factors Sunday first */
export function pattern(factors: readonly number[]): string {
	const most = factors.indexOf(Math.max(...factors));
	const least = factors.indexOf(Math.min(...factors));
	const clear =
		(factors[most] ?? 1) > 1 + CLEAR_DIFFERENCE || (factors[least] ?? 1) < 1 - CLEAR_DIFFERENCE;
	if (!clear) return say`The days of the week hardly differ.`;
	return say`${WEEKDAYS[most]} bring most (${percent(factors[most])}), ${WEEKDAYS[least]} fewest (${percent(factors[least])}).`;
}

function percent(factor = 1): string {
	const difference = Math.round(100 * (factor - 1));
	return difference < 0
		? say`${-difference} % below a mean day`
		: say`${difference} % above a mean day`;
}

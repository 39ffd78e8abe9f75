import { say } from "../../core/say.ts";
import { shownPlain } from "./shownNumber.ts";

const DAYS_PER_YEAR = 365.25;
const RAREST_YEARS = 100;
const RAREST_NEEDS = 1e6;
/** 995 of 1,000 and more would read as 100 of 100. */
const ALL_NEEDS = 1000 / 995;

/** What the unmet share means for one need, as a clause: "about one need in 1,400 finds none ready". Two digits say enough. */
export function oneNeedIn(unmetPer1000: number): string {
	if (unmetPer1000 <= 0) return say`no need is expected to find none ready`;
	const needs = 1000 / unmetPer1000;
	if (needs > RAREST_NEEDS) return say`fewer than one need in a million finds none ready`;
	if (needs < ALL_NEEDS) return say`every need finds none ready`;
	if (needs < 2) return say`about ${twoDigits(unmetPer1000 / 10)} of 100 needs find none ready`;
	return say`about one need in ${twoDigits(needs)} finds none ready`;
}

/**
 * How often a need finds no kit ready, in words a person can picture.
 *
 * Two digits, because the figures behind it are estimates; beyond a hundred years
 * no number, because nobody can know that.
 *
 * @param usesPerYear kits used on a baby in a year
 * @example 0.7 of 1,000 at 240 uses a year → "about once in 6 years"
 */
export function onceIn(unmetPer1000: number, usesPerYear: number): string {
	if (usesPerYear <= 0) return say`never, as no kit is used`;
	const aYear = (unmetPer1000 / 1000) * usesPerYear;
	if (aYear * RAREST_YEARS < 1) return say`more rarely than once in 100 years`;
	if (aYear <= 0.75) return say`about once in ${years(1 / aYear)} years`;
	if (aYear < 1.5) return say`about once a year`;
	if (aYear < 12) return times(aYear, "year");
	if (aYear < 52) return times(aYear / 12, "month");
	if (aYear < DAYS_PER_YEAR) return times(aYear / 52, "week");
	return times(aYear / DAYS_PER_YEAR, "day");
}

/** Uses in a year at the plan's own mean of uses a day. */
export function inYear(usesPerDay: number): number {
	return usesPerDay * DAYS_PER_YEAR;
}

function times(count: number, period: string): string {
	const whole = Math.round(count);
	if (whole <= 1) return say`about once a ${period}`;
	return say`about ${whole} times a ${period}`;
}

/** Half years under three, where they matter; whole years to ten, then two digits. */
function years(count: number): string {
	return count < 3
		? String(Math.round(count * 2) / 2)
		: twoDigits(count < 10 ? Math.round(count) : count);
}

function twoDigits(value: number): string {
	return shownPlain(Number(value.toPrecision(2)));
}

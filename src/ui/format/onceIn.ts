import { say } from "../../core/say.ts";
import { DAYS_PER_YEAR } from "../../core/values/date.ts";
import { shownPlain, twoDigits } from "./shownNumber.ts";

const RAREST_YEARS = 100;
/** Of 1,000 needs; what is rarer has no number in words and no bar in a picture. */
export const RAREST_NEEDS = 0.001;
/** 995 of 1,000 and more would read as 100 of 100. */
const ALL_NEEDS = 1000 / 995;

/** What the unmet share means for one need, as a clause: "about one need in 1,400 finds none ready". Two digits say enough. */
export function oneNeedIn(unmetPer1000: number): string {
	if (unmetPer1000 <= 0) return say`a kit is ready whenever one is needed`;
	if (unmetPer1000 < RAREST_NEEDS)
		return say`less than one time in a million no kit is ready when needed`;
	const needs = 1000 / unmetPer1000;
	if (needs < ALL_NEEDS) return say`no kit is ever ready when needed`;
	if (needs < 2)
		return say`about ${twoDigits(unmetPer1000 / 10)} of 100 times no kit is ready when needed`;
	return say`about one time in ${twoDigits(needs)} no kit is ready when needed`;
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
	if (aYear < 12) return say`about ${Math.round(aYear)} times a year`;
	if (aYear < 52) {
		const aMonth = Math.round(aYear / 12);
		return aMonth <= 1 ? say`about once a month` : say`about ${aMonth} times a month`;
	}
	if (aYear < DAYS_PER_YEAR) {
		const aWeek = Math.round(aYear / 52);
		return aWeek <= 1 ? say`about once a week` : say`about ${aWeek} times a week`;
	}
	const aDay = Math.round(aYear / DAYS_PER_YEAR);
	return aDay <= 1 ? say`about once a day` : say`about ${aDay} times a day`;
}

/** Uses in a year at the plan's own mean of uses a day. */
export function inYear(usesPerDay: number): number {
	return usesPerDay * DAYS_PER_YEAR;
}

/** Half years under three, where they matter; whole years to ten, then two digits. */
function years(count: number): string {
	return count < 3
		? shownPlain(Math.round(count * 2) / 2)
		: twoDigits(count < 10 ? Math.round(count) : count);
}

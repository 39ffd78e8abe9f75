import { type ShareBetween, shareBetween } from "../../counts/shareBetween.ts";
import type { ComparedDay } from "./comparedDays.ts";

/** How often what was set aside was enough, beside how often it was meant to be. */
export interface Calibration {
	/** Days with a set-aside and a record. */
	readonly days: number;
	/** Of them, days on which it was enough. */
	readonly enough: number;
	/** Where the true share lies. */
	readonly between: ShareBetween;
	/** "too_little": fewer days than asked for, beyond chance. "too_much": even one less would have been enough more often than asked for, beyond chance. */
	readonly verdict: "as_asked" | "too_little" | "too_much";
}

/** How sure the judgement is to be: the interval holds the truth at least so often (common practice, no source). */
export const SURENESS = 0.95;

/**
 * A share of 100 for reading, down to one decimal: an end of the interval that is below what
 * is asked is then never read as all of it. @example 0.9495 → 94.9
 */
export function ofHundred(share: number): number {
	return Math.floor(1000 * share) / 10;
}

/**
 * Of the past days, on how many the set-aside was enough. Whole things cannot be set aside
 * in parts, so a plan is only called too careful where one less of them would do as well.
 *
 * @param asked confidence the plan is made with, 0 to 1
 * @param step the smallest amount by which less could be set aside
 * @returns undefined without a day that can be judged
 */
export function calibration(
	compared: readonly ComparedDay[],
	asked: number,
	step: number,
): Calibration | undefined {
	const judged = compared.flatMap(({ done, setAside }) =>
		setAside === null ? [] : [{ done, setAside }],
	);
	const days = judged.length;
	if (days === 0) return undefined;
	const enoughWith = (less: number) =>
		judged.filter(({ done, setAside }) => done <= setAside - less).length;
	const enough = enoughWith(0);
	const between = shareBetween(enough, days, SURENESS);
	const withLess = shareBetween(enoughWith(step), days, SURENESS);
	const verdict =
		between.high < asked ? "too_little" : withLess.low > asked ? "too_much" : "as_asked";
	return { days, enough, between, verdict };
}

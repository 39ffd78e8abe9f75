import { MINUTES_PER_DAY, MINUTES_PER_HOUR } from "../values/clock.ts";

const HOURS = 24;

/** Share of a day's uses that falls into each hour: 24 numbers that add up to 1. */
export type HourShares = readonly number[];

export const flatDay: HourShares = Array.from({ length: HOURS }, () => 1 / HOURS);

/**
 * Mean number of something between two clock times of the plan (the integral of its intensity).
 *
 * Times are minutes after the first day's midnight, and may lie before or after
 * the plan: the day before is like the first day, the day after like the last.
 */
export class DayClock {
	readonly #perDay: readonly number[];
	/** Whether as many come at any hour as at any other. */
	readonly isEven: boolean;
	/** Share of the day that has passed at each full hour, 25 numbers from 0 to 1. */
	readonly #passed: readonly number[];
	/** Mean count from the first midnight to each midnight of the plan. */
	readonly #atMidnight: readonly number[];

	constructor(perDay: readonly number[], shares: HourShares) {
		this.#perDay = perDay;
		this.isEven = [perDay, shares].every((each) => each.every((one) => one === each[0]));
		this.#passed = runningTotals(shares);
		this.#atMidnight = runningTotals(perDay);
	}

	/** Mean count from minute `from` to minute `to`, both counted from the first midnight. */
	between(from: number, to: number): number {
		// Rounding must not make the mean of hours without births negative.
		return Math.max(0, this.#until(to) - this.#until(from));
	}

	#until(minute: number): number {
		const day = Math.floor(minute / MINUTES_PER_DAY);
		const inPlan = Math.min(Math.max(day, 0), this.#perDay.length - 1);
		const rate = this.#perDay[inPlan] as number;
		const midnight = (this.#atMidnight[inPlan] as number) + (day - inPlan) * rate;
		return midnight + rate * this.#shareUntil(minute - day * MINUTES_PER_DAY);
	}

	#shareUntil(minuteOfDay: number): number {
		// A moment that rounding puts a trace before midnight is the end of the day before.
		const hour = Math.min(HOURS - 1, Math.floor(minuteOfDay / MINUTES_PER_HOUR));
		const before = this.#passed[hour] as number;
		const after = this.#passed[hour + 1] as number;
		return before + (after - before) * (minuteOfDay / MINUTES_PER_HOUR - hour);
	}
}

function runningTotals(parts: readonly number[]): number[] {
	const totals = [0];
	for (const part of parts) totals.push((totals.at(-1) as number) + part);
	return totals;
}

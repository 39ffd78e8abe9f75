import { calculation, refuse } from "../calculation.ts";
import { say } from "../say.ts";
import { sources } from "../sources.ts";
import { DAYS_PER_WEEK, dayNumber, type IsoDate, isoDate } from "../values/date.ts";
import { bestDiscount } from "./bestDiscount.ts";
import type { DailyCounts } from "./dailyCounts.ts";
import { discountedFilter } from "./discountedFilter.ts";
import { factorsFrom } from "./weekdayFactors.ts";

/** Fewer recorded days than this do not make a forecast. */
export const FEWEST_DAYS = 14;

/** What the register says of the days to come. */
export interface Forecast {
	readonly discount: number;
	/** Gamma shape and rate of the level after the last recorded day. */
	readonly a: number;
	readonly b: number;
	readonly lastDay: IsoDate;
	/** Sunday first. */
	readonly factors: readonly number[];
	readonly logLikelihood: number;
	readonly recordedDays: number;
}

interface Inputs {
	readonly register: DailyCounts;
	readonly factors: readonly number[];
}

/** Learns the level of births and how fast it moves from the register. */
export const forecast = calculation<Inputs, Forecast>({
	key: "forecast",
	label: say`Forecast from the register`,
	unit: say`births/day`,
	formula: say`Day by day: what was known is discounted by ω, then births are added to a and the weekday factor to b. Level a ÷ b; ω from 0.8 to 1 is the one under which the register's own days were forecast best.`,
	source: sources.discounted,
	inputs: {
		register: { label: say`Births in the register`, unit: say`births/day` },
		factors: { label: say`Weekday factors`, unit: say`times a mean day` },
	},
	example: {
		// Two births on each of 14 days: nothing moves, so ω is 1, a 14 × 2 and b 14 × 1. The 2nd to
		// the 14th day are forecast: 2 births from mean 2 and size 2, 4, … 26, logarithms added up.
		inputs: {
			register: { firstDay: "2027-03-01", counts: Array.from({ length: 14 }, () => 2) },
			factors: [1, 1, 1, 1, 1, 1, 1],
		},
		result: {
			discount: 1,
			a: 28,
			b: 14,
			lastDay: "2027-03-14",
			factors: [1, 1, 1, 1, 1, 1, 1],
			logLikelihood: -18.34698,
			recordedDays: 14,
		},
		within: 1e-5,
	},
	compute: ({ register, factors }) => {
		const recorded = register.counts.filter((count) => count !== null);
		if (recorded.length < FEWEST_DAYS)
			return refuse({
				code: "short-register",
				received: say`${recorded.length} recorded days`,
				allowed: say`at least ${FEWEST_DAYS}`,
				message: say`The register has ${recorded.length} recorded days; a forecast needs at least ${FEWEST_DAYS}. Until then births a day from the settings are used.`,
				place: { file: "records.csv", line: null, column: "births" },
			});
		if (recorded.every((count) => count === 0))
			return refuse({
				code: "no-births-recorded",
				received: say`0 births on every day`,
				allowed: say`at least one day with a birth`,
				message: say`No recorded day has a birth, so nothing can be learned; births a day from the settings are used.`,
				place: { file: "records.csv", line: null, column: "births" },
			});
		const turned = factorsFrom(register.firstDay, factors);
		const discount = bestDiscount(register.counts, turned);
		const { a, b, logLikelihood } = discountedFilter(register.counts, turned, { discount });
		const lastDay = isoDate((dayNumber(register.firstDay) as number) + register.counts.length - 1);
		return { discount, a, b, lastDay, factors, logLikelihood, recordedDays: recorded.length };
	},
});

/** Births of a day to come: negative binomial with this mean and size. */
export interface DayAhead {
	readonly mean: number;
	readonly size: number;
}

/** Below this size a negative binomial says "most likely none", and sets aside less the less it knows. */
const LEAST_SIZE = 1;

/**
 * The forecast of one day: the level stays, and is known less the further ahead, but
 * never so little that knowing less would set less aside.
 */
export function dayAhead({ a, b, discount, factors, lastDay }: Forecast, date: IsoDate): DayAhead {
	const day = dayNumber(date) as number;
	const ahead = Math.max(1, day - (dayNumber(lastDay) as number));
	const factor = factors[(((day + 4) % DAYS_PER_WEEK) + DAYS_PER_WEEK) % DAYS_PER_WEEK] as number;
	const least = Math.min(LEAST_SIZE, a * discount);
	return { mean: (factor * a) / b, size: Math.max(least, a * discount ** ahead) };
}

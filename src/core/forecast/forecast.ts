import { calculation } from "../calculation.ts";
import type { LevelOfDay } from "../counts/counts.ts";
import { memoize } from "../memoize.ts";
import { refuse } from "../refusal.ts";
import { say } from "../say.ts";
import { sources } from "../sources.ts";
import { DAYS_PER_WEEK, dayNumber, type IsoDate, isoDate } from "../values/date.ts";
import { LEAST_DISCOUNT } from "./bestDiscount.ts";
import type { DailyCounts } from "./dailyCounts.ts";
import { discountedFilter } from "./discountedFilter.ts";
import { firstLevel } from "./firstLevel.ts";
import { levelAhead } from "./levelAhead.ts";
import { likeliest } from "./likeliest.ts";
import { factorsFrom } from "./weekdayFactors.ts";

/** With fewer recorded days or births than these, births a day from the settings lead. */
export const FEWEST_DAYS = 14;
export const FEWEST_BIRTHS = 10;

/** What the register says of the days to come. */
export interface Forecast {
	/** The register alone, or births a day from the settings moved by a young register. */
	readonly ledBy: "register" | "settings";
	readonly discount: number;
	/** 1 ÷ the size of a day's own variation; 0 where days are Poisson. */
	readonly daySpread: number;
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
	/** Births a day from the settings; null where there is no such figure. */
	readonly birthsPerDay: number | null;
	readonly priorDays: number;
}

/** Learns the level of births and how fast it moves from the register. */
export const forecast = calculation<Inputs, Forecast>({
	key: "forecast",
	label: say`Forecast from the register`,
	unit: say`births/day`,
	formula: say`Day by day: what was known is discounted by ω, then births are added to a and the weekday factor to b; where days vary more than Poisson, with a size r of their own, both ÷ (1 + average births ÷ r). Level a ÷ b. ω from ${LEAST_DISCOUNT} to 1 and r are those under which the recorded days themselves were forecast best. With fewer than ${FEWEST_DAYS} recorded days or ${FEWEST_BIRTHS} births: a is births a day × days it counts for + births recorded, b is those days + weekday factors.`,
	source: sources.discounted,
	inputs: {
		register: { label: say`Births in the register`, unit: say`births/day` },
		factors: { label: say`Weekday factors`, unit: say`times a mean day` },
		birthsPerDay: { label: say`Births a day`, unit: say`births/day`, min: 0 },
		priorDays: {
			label: say`Days of the register that births a day count for`,
			unit: say`days`,
			min: 1,
		},
	},
	example: {
		// Two births on each of 14 days: nothing moves, so ω is 1, a 14 × 2 and b 14 × 1. The 2nd to
		// the 14th day are forecast: 2 births from mean 2 and size 2, 4, … 26, logarithms added up.
		inputs: {
			register: { firstDay: "2027-03-01", counts: Array.from({ length: 14 }, () => 2) },
			factors: [1, 1, 1, 1, 1, 1, 1],
			birthsPerDay: 5,
			priorDays: 7,
		},
		result: {
			ledBy: "register",
			discount: 1,
			daySpread: 0,
			a: 28,
			b: 14,
			lastDay: "2027-03-14",
			factors: [1, 1, 1, 1, 1, 1, 1],
			logLikelihood: -18.34698,
			recordedDays: 14,
		},
		within: 1e-5,
	},
	compute: ({ register, factors, birthsPerDay, priorDays }) => {
		const recorded = register.counts.filter((count) => count !== null);
		const births = recorded.reduce((sum, count) => sum + count, 0);
		const turned = factorsFrom(register.firstDay, factors);
		const lastDay = isoDate((dayNumber(register.firstDay) as number) + register.counts.length - 1);
		const common = { lastDay, factors, recordedDays: recorded.length };
		if (recorded.length >= FEWEST_DAYS && births >= FEWEST_BIRTHS) {
			const variation = learned(register.counts, turned);
			const filtered = discountedFilter(register.counts, turned, variation);
			return { ledBy: "register", ...variation, ...filtered, ...common };
		}
		if (birthsPerDay === null || birthsPerDay + births === 0)
			return refuse({
				code: "short-register",
				received: say`${recorded.length} recorded days, ${births} births`,
				allowed: say`at least ${FEWEST_DAYS} days and ${FEWEST_BIRTHS} births`,
				message: say`The register is too short to plan by alone; until then give births a day in the settings.`,
				place: { file: "records.csv", line: null, column: "births" },
			});
		const level = firstLevel(register.counts, turned, birthsPerDay, priorDays);
		return { ledBy: "settings", discount: 1, daySpread: 0, ...level, logLikelihood: 0, ...common };
	},
});

/** An edit elsewhere leaves the register as it was. */
const learned = memoize(likeliest, (counts, factors) => [counts.join(), factors.join()]);

/**
 * The births of one day: the level stays, and is known less the further ahead. Days
 * alike are the same object.
 */
export function dayAhead(
	{ a, b, discount, daySpread, factors, lastDay }: Forecast,
	date: IsoDate,
): LevelOfDay {
	const day = dayNumber(date) as number;
	const ahead = day - (dayNumber(lastDay) as number);
	const factor = factors[(((day + 4) % DAYS_PER_WEEK) + DAYS_PER_WEEK) % DAYS_PER_WEEK] as number;
	return levelOfDay((factor * a) / b, levelAhead(a, discount, ahead), daySpread);
}

const levelOfDay = memoize(
	(mean: number, levelShape: number, daySpread: number): LevelOfDay => ({
		mean,
		levelShape,
		daySpread,
	}),
);

import { chanceAtMost } from "../../src/core/counts/counts.ts";
import { logChance, negativeBinomial } from "../../src/core/counts/negativeBinomial.ts";
import { spanShape } from "../../src/core/counts/spanShape.ts";
import type { DailyCounts } from "../../src/core/forecast/dailyCounts.ts";
import { dayAhead, type Forecast, forecast } from "../../src/core/forecast/forecast.ts";
import { interval } from "../../src/core/forecast/scorecard.ts";
import { factorsOf } from "../../src/core/forecast/weekdayFactors.ts";
import { addDays, type IsoDate } from "../../src/core/values/date.ts";
import { answerOf } from "../core/answerOf.ts";
import { meanOfBatches } from "../reference/randomNumbers.ts";

const DAYS_AHEAD = 7;
/** A simple way that says 0 would call a birth impossible. */
const LEAST_MEAN = 0.5;

/** One day as it was forecast, and what came. */
interface Scored {
	/** Inside the range shown for nine of ten days. */
	readonly inside: boolean;
	/**
	 * Inside when the count is placed at random within its own step of the distribution
	 * (randomised probability integral transform): 90 % where the forecast is right,
	 * however few the births; whole numbers alone make ranges hold more.
	 */
	readonly placedInside: boolean;
	/** Logarithm of the chance given to what came, and by the two simple ways. */
	readonly forecast: number;
	readonly plainMean: number;
	readonly lastWeek: number;
}

/** What many windows of one unit came to; standard errors are between windows. */
export interface Result {
	readonly windows: number;
	readonly days: number;
	readonly coverage: number;
	readonly placedCoverage: number;
	readonly placedError: number;
	readonly logScore: number;
	/** How much better than the simple ways, in mean logarithm; below 0 is worse. */
	readonly overPlainMean: number;
	readonly overPlainMeanError: number;
	readonly overLastWeek: number;
	readonly overLastWeekError: number;
}

/**
 * Forecasts the week after each of many registers cut from one unit's days, as the plan
 * does: weekday factors, discount and level from the register alone.
 */
export function backtest(
	counts: readonly number[],
	firstDay: IsoDate,
	registerDays: number,
	windows: number,
	random: () => number,
): Result {
	const room = counts.length - registerDays - DAYS_AHEAD;
	const scored = Array.from({ length: windows }, (_, i) => {
		const from = Math.floor((i * room) / windows);
		const register: DailyCounts = {
			firstDay: addDays(firstDay, from),
			counts: counts.slice(from, from + registerDays),
		};
		return weekAfter(register, counts.slice(from + registerDays), random);
	});
	const all = scored.flat();
	const share = (of: (day: Scored) => boolean) => all.filter(of).length / all.length;
	const perWindow = (of: (day: Scored) => number) =>
		meanOfBatches(scored.map((week) => week.reduce((sum, day) => sum + of(day), 0) / week.length));
	const placed = perWindow((day) => Number(day.placedInside));
	const overMean = perWindow((day) => day.forecast - day.plainMean);
	const overWeek = perWindow((day) => day.forecast - day.lastWeek);
	return {
		windows: scored.length,
		days: all.length,
		coverage: share((day) => day.inside),
		placedCoverage: placed.mean,
		placedError: placed.standardError,
		logScore: perWindow((day) => day.forecast).mean,
		overPlainMean: overMean.mean,
		overPlainMeanError: overMean.standardError,
		overLastWeek: overWeek.mean,
		overLastWeekError: overWeek.standardError,
	};
}

function weekAfter(register: DailyCounts, came: readonly number[], random: () => number): Scored[] {
	const known = register.counts as readonly number[];
	const learned: Forecast = answerOf(forecast, {
		register,
		factors: factorsOf(register),
		birthsPerDay: null,
		priorDays: 7,
	});
	const plain = known.reduce((sum, count) => sum + count, 0) / known.length;
	return came.slice(0, DAYS_AHEAD).map((count, day) => {
		const births = dayAhead(learned, addDays(learned.lastDay, day + 1));
		const { mean } = births;
		const size = spanShape([births]);
		const ahead = negativeBinomial(size, mean);
		const { low, high } = interval(ahead, 0.9);
		const below = chanceAtMost(ahead, count - 1);
		const place = below + random() * (chanceAtMost(ahead, count) - below);
		const weekBefore = known.at(day - DAYS_AHEAD) as number;
		return {
			inside: count >= low && count <= high,
			placedInside: place >= 0.05 && place <= 0.95,
			forecast: logChance(count, size, mean),
			plainMean: logPoisson(count, Math.max(plain, LEAST_MEAN)),
			lastWeek: logPoisson(count, Math.max(weekBefore, LEAST_MEAN)),
		};
	});
}

function logPoisson(count: number, mean: number): number {
	let log = -mean;
	for (let k = 1; k <= count; k++) log += Math.log(mean / k);
	return log;
}

import { calculation, derive, type Figure, nameFigure } from "../calculation.ts";
import { type Counts, once } from "../counts/counts.ts";
import { expectedOf } from "../counts/expectedOf.ts";
import { mixedCount } from "../counts/mixedCount.ts";
import { poissonCount } from "../counts/poissonCount.ts";
import { setAsideOf } from "../counts/setAsideOf.ts";
import { sumAtLevel } from "../counts/sumAtLevel.ts";
import { expiredCounts } from "../kits/expiredCounts.ts";
import { usedAndExpiredCounts } from "../kits/usedAndExpiredCounts.ts";
import { memoized } from "../memoize.ts";
import type { LoadMethod } from "../methods/method.ts";
import { say } from "../say.ts";
import { sources } from "../sources.ts";
import { total } from "../total.ts";
import { byDate, roundsByDate } from "./byDate.ts";
import type { CountFigures, Pair } from "./countFigures.ts";
import type { DayFigures } from "./dayFigures.ts";
import { productOver } from "./productOver.ts";
import { sizeOf } from "./sizeOf.ts";
import type { UnitFigures } from "./unitFigures.ts";

const births = countMeasure("births", say`Births`, say`births`);
const kitsUsed = countMeasure("kits_used", say`Kits used`, say`kits`);
const kitsExpired = countMeasure("kits_expired", say`Kits gone out of date`, say`kits`);
const kitsToReprocess = countMeasure("kits_to_reprocess", say`Kits to reprocess`, say`kits`);

const expiredDays = memoized(expiredCounts);
const usedAndExpired = memoized(usedAndExpiredCounts);

const roundsThatRun = counted("rounds", say`Rounds that run`, say`rounds`);
const loads = counted("loads", say`Loads`, say`loads`);
const preparations = counted("preparations", say`Preparations`, say`preparations`);

/** The calculations of something counted whose days' distributions are known. */
function counted(key: string, label: string, unit: string) {
	return {
		label,
		unit,
		total: total(`${key}_expected`, say`${label}, average`, unit),
		expected: expectedOf(`${key}_expected`, label, unit),
		setAside: setAsideOf(`${key}_set_aside`, label, unit),
	};
}

type CountMeasure = ReturnType<typeof countMeasure>;

/** The calculations of something counted, with its mean given day by day. */
function countMeasure(key: string, label: string, unit: string) {
	return {
		label,
		unit,
		total: total(`${key}_expected`, say`${label}, average`, unit),
		poisson: poissonCount(label, unit, sources.thinning),
		mixed: memoized(mixedCount(label, unit)),
		setAside: setAsideOf(`${key}_set_aside`, label, unit),
	};
}

/** The counts of a single day. */
export function countsOfDay(unit: UnitFigures, day: DayFigures): CountFigures {
	const confidence = unit.read.settings.plan_confidence;
	return {
		births: birthsOver(births, [day], (each) => each.births, confidence),
		kitsUsed: birthsOver(kitsUsed, [day], (each) => each.kitUses, confidence),
		kitsExpired: expiredOver(unit, [day]),
		kitsToReprocess: kitsToReprocessOver(unit, [day]),
		...countedOver([day], confidence),
		product: productOver(unit, [day], confidence),
		rounds: roundsByDate([day]),
	};
}

/** Kits gone out of date on some days: their mean, and how likely each number is. */
function expired(unit: UnitFigures, days: readonly DayFigures[]) {
	const mean = summed(kitsExpired, days, (day) => day.expiries);
	const counts = derive(expiredDays, {
		mean,
		kitsInService: unit.kitsInService,
		readyLifeDays: unit.readyLifeDays,
		days: nameFigure(say`Days`, days.length),
	});
	return { mean, counts };
}

function expiredOver(unit: UnitFigures, days: readonly DayFigures[]): Pair {
	const { mean, counts } = expired(unit, days);
	const confidence = unit.read.settings.plan_confidence;
	return { expected: mean, setAside: derive(kitsExpired.setAside, { counts, confidence }) };
}

/** The sum of one figure of some days; of a day alone, its own. */
function summed(
	measure: Pick<CountMeasure, "label" | "unit" | "total">,
	days: readonly DayFigures[],
	of: (day: DayFigures) => Figure,
): Figure {
	return days.length === 1
		? of(days[0] as DayFigures)
		: derive(measure.total, { parts: byDate(measure.label, measure.unit, days, of) });
}

/** Births, or the uses they bring: negative binomial on forecast days, Poisson on the others. */
function birthsOver(
	measure: CountMeasure,
	days: readonly DayFigures[],
	of: (day: DayFigures) => Figure,
	confidence: Figure,
): Pair {
	const counts = countsOver(measure, days, of);
	return {
		expected: summed(measure, days, of),
		setAside: derive(measure.setAside, { counts, confidence }),
	};
}

function countsOver(
	measure: CountMeasure,
	days: readonly DayFigures[],
	of: (day: DayFigures) => Figure,
): Figure<Counts> {
	const forecast = days.filter((day) => day.level);
	if (forecast.length === 0) return derive(measure.poisson, { mean: summed(measure, days, of) });
	const own = days.filter((day) => !day.level);
	return derive(measure.mixed, {
		poissonMean: summed(measure, own, of),
		forecastMean: summed(measure, forecast, of),
		size: sizeOf(days),
	});
}

/** Kits used and kits gone out of date: never fewer than those used. */
function kitsToReprocessOver(unit: UnitFigures, days: readonly DayFigures[]): Pair {
	const used = countsOver(kitsUsed, days, (day) => day.kitUses);
	const counts = derive(usedAndExpired, { used, expired: expired(unit, days).counts });
	const confidence = unit.read.settings.plan_confidence;
	return {
		expected: summed(kitsToReprocess, days, (day) => day.toReprocess),
		setAside: derive(kitsToReprocess.setAside, { counts, confidence }),
	};
}

/**
 * The counts of the whole plan. A total of Poisson counts is Poisson; forecast days
 * share their level; rounds, loads and preparations of the days are added up at it.
 * The days' set-asides are not used.
 */
export function countsOfPeriod(unit: UnitFigures, days: readonly DayFigures[]): CountFigures {
	const confidence = unit.read.settings.plan_confidence;
	return {
		births: birthsOver(births, days, (day) => day.births, confidence),
		kitsUsed: birthsOver(kitsUsed, days, (day) => day.kitUses, confidence),
		kitsExpired: expiredOver(unit, days),
		kitsToReprocess: kitsToReprocessOver(unit, days),
		...countedOver(days, confidence),
		product: productOver(unit, days, confidence),
		rounds: roundsByDate(days),
	};
}

/** Births and kits to reprocess on average, without what is set aside for them. */
export function expectedOver(
	days: readonly DayFigures[],
): Record<"births" | "kitsToReprocess", Figure> {
	return {
		births: summed(births, days, (day) => day.births),
		kitsToReprocess: summed(kitsToReprocess, days, (day) => day.toReprocess),
	};
}

/** Rounds that run, loads and preparations of some days. */
function countedOver(days: readonly DayFigures[], confidence: Figure) {
	const over = (
		measure: ReturnType<typeof counted>,
		of: (day: DayFigures) => Figure<Counts>,
	): Pair => {
		const { label, unit } = measure;
		const counts =
			days.length === 1
				? of(days[0] as DayFigures)
				: derive(addedUp, { counts: byDate(label, unit, days, of) });
		return {
			expected: summed(measure, days, (day) => derive(measure.expected, { counts: of(day) })),
			setAside: derive(measure.setAside, { counts, confidence }),
		};
	};
	const methods = Object.keys((days[0] as DayFigures).loadCounts) as LoadMethod[];
	return {
		roundsThatRun: over(roundsThatRun, (day) => day.roundCounts),
		loads: Object.fromEntries(
			methods.map((method) => [
				method,
				over(loads, (day) => day.loadCounts[method] as Figure<Counts>),
			]),
		),
		preparations: over(preparations, (day) => day.preparationCounts),
	};
}

const addedUp = calculation<{ counts: readonly Counts[] }, Counts>({
	key: "counts_added_up",
	label: say`Total: how likely each number is`,
	unit: "",
	formula: say`The days' counts added up: every combination of days, with its chance. Forecast days share the level of births, and are added up at each level it may have; over more than a month by mean, variance and skewness at each.`,
	source: sources.thinning,
	inputs: { counts: { label: say`The days' counts`, unit: "" } },
	example: {
		inputs: { counts: [once(0.5), once(0.5)] },
		result: { first: 0, chance: Float64Array.of(0.25, 0.5, 0.25) },
		within: 1e-12,
	},
	compute: ({ counts }) => sumAtLevel(counts),
});

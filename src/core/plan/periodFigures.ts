import { calculation, derive, type Figure } from "../calculation.ts";
import { measureOut, type Preparation } from "../chlorine/measureOut.ts";
import { type Counts, once } from "../counts/counts.ts";
import { poissonCount, setAsideOf } from "../counts/measures.ts";
import { mixedCount } from "../counts/mixedCount.ts";
import { sumOf } from "../counts/sumOf.ts";
import { memoized } from "../memoize.ts";
import { partOf } from "../partOf.ts";
import { total } from "../quantities.ts";
import { say } from "../say.ts";
import { sources } from "../sources.ts";
import { productExpected, productSetAside } from "../stock/productOverDays.ts";
import { byDate, roundsByDate } from "./byDate.ts";
import type { CountFigures, Pair } from "./countFigures.ts";
import type { DayFigures } from "./dayFigures.ts";
import type { UnitFigures } from "./unitFigures.ts";

const births = countMeasure("births", say`Births`, say`births`);
const kitsUsed = countMeasure("kits_used", say`Kits used`, say`kits`);
const kitsExpired = countMeasure("kits_expired", say`Kits gone out of date`, say`kits`);
const kitsToReprocess = countMeasure("kits_to_reprocess", say`Kits to reprocess`, say`kits`);

type CountMeasure = ReturnType<typeof countMeasure>;

/** The calculations of something counted, with its mean given day by day. */
function countMeasure(key: string, label: string, unit: string) {
	return {
		label,
		unit,
		total: total(`${key}_expected`, say`${label}, expected`, unit),
		poisson: poissonCount(label, unit, sources.thinning),
		mixed: mixedCount(label, unit),
		setAside: setAsideOf(`${key}_set_aside`, label, unit),
	};
}

/** The counts of a single day. */
export function countsOfDay(unit: UnitFigures, day: DayFigures): CountFigures {
	const confidence = unit.read.settings.plan_confidence;
	const of = (measure: CountMeasure, expected: Figure): Pair => {
		const counts = derive(measure.poisson, { mean: expected });
		return { expected, setAside: derive(measure.setAside, { counts, confidence }) };
	};
	return {
		births: birthsOver(births, [day], (each) => each.births, confidence),
		kitsUsed: birthsOver(kitsUsed, [day], (each) => each.kitUses, confidence),
		kitsExpired: of(kitsExpired, day.expiries),
		kitsToReprocess: of(kitsToReprocess, day.toReprocess),
		roundCounts: day.roundCounts,
		loadCounts: day.loadCounts,
		preparationCounts: day.preparationCounts,
		product: productOver([day], confidence),
		rounds: roundsByDate([day]),
	};
}

/** Births, or the uses they bring: negative binomial on forecast days, Poisson on the others. */
function birthsOver(
	measure: CountMeasure,
	days: readonly DayFigures[],
	of: (day: DayFigures) => Figure,
	confidence: Figure,
): Pair {
	const sum = (part: readonly DayFigures[]): Figure =>
		part.length === 1
			? of(part[0] as DayFigures)
			: derive(measure.total, { parts: byDate(measure.label, measure.unit, part, of) });
	const expected = sum(days);
	const forecast = days.filter((day) => day.birthSize);
	// The day furthest ahead is known least; its size makes the total no surer than its parts.
	const size = forecast.at(-1)?.birthSize;
	const counts = size
		? derive(measure.mixed, {
				poissonMean: sum(days.filter((day) => !day.birthSize)),
				forecastMean: sum(forecast),
				size,
			})
		: derive(measure.poisson, { mean: expected });
	return { expected, setAside: derive(measure.setAside, { counts, confidence }) };
}

/**
 * The counts of the whole plan. A total of Poisson counts is Poisson; rounds, loads
 * and preparations of the days are added up exactly. The days' set-asides are not used.
 */
export function countsOfPeriod(unit: UnitFigures, days: readonly DayFigures[]): CountFigures {
	const confidence = unit.read.settings.plan_confidence;
	const poisson = (measure: CountMeasure, of: (day: DayFigures) => Figure): Pair => {
		const expected = derive(measure.total, {
			parts: byDate(measure.label, measure.unit, days, of),
		});
		const counts = derive(measure.poisson, { mean: expected });
		return { expected, setAside: derive(measure.setAside, { counts, confidence }) };
	};
	const added = (label: string, figureUnit: string, of: (day: DayFigures) => Figure<Counts>) =>
		derive(addedUp, { counts: byDate(label, figureUnit, days, of) });
	return {
		births: birthsOver(births, days, (day) => day.births, confidence),
		kitsUsed: birthsOver(kitsUsed, days, (day) => day.kitUses, confidence),
		kitsExpired: poisson(kitsExpired, (day) => day.expiries),
		kitsToReprocess: poisson(kitsToReprocess, (day) => day.toReprocess),
		roundCounts: added(say`Rounds that run`, say`rounds`, (day) => day.roundCounts),
		loadCounts: added(say`Loads`, say`loads`, (day) => day.loadCounts),
		preparationCounts: added(say`Preparations`, say`preparations`, (day) => day.preparationCounts),
		product: productOver(days, confidence),
		rounds: roundsByDate(days),
	};
}

const addedUp = calculation<{ counts: readonly Counts[] }, Counts>({
	key: "counts_added_up",
	label: say`Total: how likely each number is`,
	unit: "",
	formula: say`The days' counts added up exactly: every combination of days, with its chance.`,
	source: sources.thinning,
	inputs: { counts: { label: say`The days' counts`, unit: "" } },
	example: {
		inputs: { counts: [once(0.5), once(0.5)] },
		result: { first: 0, chance: Float64Array.of(0.25, 0.5, 0.25) },
		within: 1e-12,
	},
	compute: ({ counts }) => sumOf(counts),
});

const quantityMeasured = partOf<Preparation, "quantity">(
	measureOut,
	"quantity",
	say`Product for one preparation`,
	say`mL, g or tablets`,
);

const productOfDay = {
	expected: memoized(productExpected),
	setAside: memoized(productSetAside),
};
const productOfPeriod = { expected: productExpected, setAside: productSetAside };

/** Product for the preparations of some days. */
export function productOver(
	days: readonly Pick<DayFigures, "date" | "preparationCounts" | "preparation">[],
	confidence: Figure,
): Pair {
	const inputs = {
		preparations: byDate(
			say`Preparations of each day`,
			say`preparations`,
			days,
			(day) => day.preparationCounts,
		),
		quantities: byDate(
			say`Product for one preparation on each day`,
			say`mL, g or tablets`,
			days,
			(day) => derive(quantityMeasured, { whole: day.preparation }),
		),
	};
	const { expected, setAside } = days.length === 1 ? productOfDay : productOfPeriod;
	return {
		expected: derive(expected, inputs),
		setAside: derive(setAside, { ...inputs, confidence }),
	};
}

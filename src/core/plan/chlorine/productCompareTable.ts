import { calculation, derive, type Figure, nameFigure } from "../../calculation.ts";
import { GRAMS_PER_LITRE_PER_PCT, type Strength } from "../../chlorine/availableChlorine.ts";
import { asLabelled } from "../../chlorine/shownStrength.ts";
import { tooWeak } from "../../chlorine/tooWeak.ts";
import { type ComputedRow, type ComputedTable, onDemand } from "../../computedTable.ts";
import { valueIn } from "../../outcome.ts";
import { cellFigure } from "../../read/cellFigure.ts";
import { say } from "../../say.ts";
import type { ChlorineRow } from "../../sheets/chlorine.ts";
import { itemsSheet } from "../../sheets/items.ts";
import { productCompareSheet } from "../../sheets/productCompare.ts";
import { definition, sources } from "../../sources.ts";
import { inMeasure } from "../../stock/inMeasure.ts";
import { cheapest, type Interval, orderInterval, type Pack } from "../../stock/orderInterval.ts";
import { DAYS_PER_QUARTER, DAYS_PER_WEEK } from "../../values/date.ts";
import type { Pair } from "../countFigures.ts";
import type { UnitFigures } from "../unitFigures.ts";
import type { ProductFigures } from "./productFigures.ts";
import { strengthAfter } from "./strengthAfter.ts";

/** Order intervals that are compared, in days. */
const INTERVALS = [7, 14, 28, 56, DAYS_PER_QUARTER] as const;
/** The longer of the periods, as the sheet names it. */
export const QUARTER = say`quarter`;
const PERIODS = [
	{ name: say`week`, days: DAYS_PER_WEEK },
	{ name: QUARTER, days: DAYS_PER_QUARTER },
];
const MEASURES = { liquid: "mL", powder: "g", tablet: "tablet" } as const;

interface Inputs {
	readonly litresPerDay: number;
	readonly targetPct: number;
	/** Strength on each day after a fresh delivery. */
	readonly strengths: readonly Strength[];
	readonly pack: Pack;
}

const bestInterval = calculation<Inputs, Interval>({
	key: "best_interval",
	label: say`Order interval that costs least`,
	unit: say`days`,
	formula: say`Ordered fresh every ${INTERVALS.join(", ")} days: each day takes litres × strength wanted ÷ that day's strength; whole packs; the interval whose packs cost least a day. An interval in which the product fades below the strength wanted is left out.`,
	source: sources.fading,
	rounding: say`Up to whole packs at each order.`,
	inputs: {
		litresPerDay: { label: say`Solution a day, expected`, unit: say`L/day`, min: 0 },
		targetPct: { label: say`Strength of the soak`, unit: "%", min: 1e-6 },
		strengths: {
			label: say`Strength after each day in the store`,
			unit: say`g/L, g/g or g/tablet`,
		},
		pack: { label: say`Pack`, unit: "" },
	},
	example: {
		// 25 g of chlorine a day are 714.3 mL of 3.5 %, which does not fade here: 14, 28 and 56 days
		// take 1, 2 and 4 whole packs, the others pay for part of one they do not use up.
		inputs: {
			litresPerDay: 5,
			targetPct: 0.5,
			strengths: Array.from({ length: 91 }, () => ({ form: "liquid", gramsPerLitre: 35 })),
			pack: { size: 10_000, price: 8 },
		},
		result: { days: 56, quantity: 40_000, packs: 4, cost: 32, lostGrams: 0 },
		within: 1e-6,
	},
	compute: ({ litresPerDay, targetPct, strengths, pack }) => {
		const grams = litresPerDay * targetPct * GRAMS_PER_LITRE_PER_PCT;
		const after = (day: number) => strengths[day] as Strength;
		const lasting = INTERVALS.filter((days) => makes(after(days - 1), targetPct));
		if (lasting.length === 0) return tooWeak(asLabelled(after(INTERVALS[0] - 1)), targetPct);
		return cheapest(lasting.map((days) => orderInterval(days, grams, after, pack)));
	},
});

/** Whether a product of this strength can be mixed to the strength wanted; tablets always can. */
function makes(strength: Strength, targetPct: number): boolean {
	return strength.form === "tablet" || asLabelled(strength) >= targetPct;
}

/** `ofExample`: what the example's interval of 700 mL in 2 packs for 12, with 3 g lost, has of it. */
const overPeriod = (
	key: string,
	label: string,
	unit: string,
	of: (interval: Interval) => number,
	ofExample: number,
) =>
	calculation<{ interval: Interval; days: number }, number>({
		key,
		label,
		unit,
		formula: say`Of one interval × days of the period ÷ days of the interval.`,
		source: sources.fading,
		inputs: {
			interval: { label: say`Order interval that costs least`, unit: say`days` },
			days: { label: say`Days of the period`, unit: say`days`, min: 1 },
		},
		example: {
			inputs: {
				interval: { days: 14, quantity: 700, packs: 2, cost: 12, lostGrams: 3 },
				days: 91,
			},
			// 91 days are six and a half intervals.
			result: 6.5 * ofExample,
			within: 1e-9,
		},
		compute: ({ interval, days }) => (of(interval) * days) / interval.days,
	});

const quantity = overPeriod(
	"quantity",
	say`Product`,
	say`mL, g or tablets`,
	(i) => i.quantity,
	700,
);
const packs = overPeriod("packs", say`Packs`, say`packs`, (i) => i.packs, 2);
const cost = overPeriod("cost", say`Cost`, say`currency`, (i) => i.cost ?? 0, 12);
const lost = overPeriod("lost_g", say`Lost to fading`, say`g chlorine`, (i) => i.lostGrams, 3);
const weight = (kgPerUnit: number) =>
	overPeriod("weight_kg", say`To carry`, "kg", (i) => i.quantity * kgPerUnit, 700 * kgPerUnit);

const litresOver = calculation<{ perDay: number; days: number }, number>({
	key: "litres",
	label: say`Solution`,
	unit: "L",
	formula: say`Solution a day × days of the period.`,
	source: sources.madeUpTo,
	inputs: {
		perDay: { label: say`Solution a day, expected`, unit: say`L/day`, min: 0 },
		days: { label: say`Days of the period`, unit: say`days`, min: 1 },
	},
	example: { inputs: { perDay: 5.5, days: DAYS_PER_WEEK }, result: 38.5, within: 1e-9 },
	compute: ({ perDay, days }) => perDay * days,
});

const perDay = calculation<{ litres: number; planDays: number }, number>({
	key: "litres_per_day",
	label: say`Solution a day, expected`,
	unit: say`L/day`,
	formula: say`Solution expected over the plan ÷ its days.`,
	source: sources.madeUpTo,
	inputs: {
		litres: { label: say`Solution, expected`, unit: "L", min: 0 },
		planDays: { label: say`Days in the plan`, unit: say`days`, min: 1 },
	},
	example: { inputs: { litres: 38.5, planDays: 7 }, result: 5.5, within: 1e-9 },
	compute: ({ litres, planDays }) => litres / planDays,
});

/** Every product over a week and a quarter. */
export function productCompareTable(
	unit: UnitFigures,
	solution: Pair,
): ComputedTable<typeof productCompareSheet> {
	return onDemand(productCompareSheet, () => {
		const { plan_days: planDays } = unit.read.settings;
		const litresPerDay = derive(perDay, { litres: solution.expected, planDays });
		return unit.products.flatMap((product) => {
			const interval = derive(bestInterval, {
				litresPerDay,
				targetPct: unit.read.settings.target_strength_pct,
				strengths: freshStrengths(unit, product),
				pack: packOf(unit, product),
			});
			return PERIODS.map((period) => rowOf(product, period, litresPerDay, interval));
		});
	});
}

/** Strength of a delivery made today, day by day. */
function freshStrengths({ read }: UnitFigures, product: ProductFigures): Figure<Strength[]> {
	const days = Array.from({ length: Math.max(...INTERVALS) }, (_, day) =>
		strengthAfter(read, product, day),
	);
	const refused = days.find((day) => !day.outcome.ok);
	if (refused) return refused as Figure<never>;
	const strengths = days.map((day) => valueIn(day) as Strength);
	return nameFigure(say`Strength after each day in the store`, strengths);
}

const packBought = calculation<Pack, Pack>({
	key: "pack",
	label: say`Pack`,
	unit: "",
	formula: say`The pack of the store's list: how much of the product is in it, and its price.`,
	source: definition,
	inputs: {
		size: { label: say`Pack size`, unit: say`mL, g or tablets`, min: 0 },
		price: { label: say`Price of a pack`, unit: say`currency` },
	},
	example: {
		inputs: { size: 5000, price: 4 },
		result: { size: 5000, price: 4 },
		within: 0,
	},
	compute: (pack) => pack,
});

function packOf({ read }: UnitFigures, product: ProductFigures): Figure<Pack> {
	const item = read.tables.items.rows.find(({ value }) => value.item === product.row.value.product);
	if (!item) return nameFigure(say`Pack`, { size: 1, price: null });
	const { measure } = item.value;
	const size = derive(inMeasure, {
		quantity: { ...cellFigure(itemsSheet, item, "pack_size"), unit: measure },
		from: cellFigure(itemsSheet, item, "measure"),
		to: nameFigure(say`Product is measured in`, MEASURES[product.row.value.form]),
	});
	return derive(packBought, { size, price: cellFigure(itemsSheet, item, "pack_price") });
}

function rowOf(
	product: ProductFigures,
	period: (typeof PERIODS)[number],
	litresPerDay: Figure,
	interval: Figure<Interval>,
): ComputedRow<typeof productCompareSheet> {
	const days = nameFigure(say`Days of the period`, period.days);
	const { form } = product.row.value;
	const kg = kgPerUnit(product.row.value);
	const known = valueIn(interval);
	return {
		product: product.name,
		period: nameFigure(say`Over`, period.name),
		litres: derive(litresOver, { perDay: litresPerDay, days }),
		order_every_days: known
			? nameFigure(say`Order every`, known.days)
			: (interval as Figure<never>),
		quantity: derive(quantity, { interval, days }),
		measure: nameFigure(say`Measured in`, MEASURES[form]),
		packs: derive(packs, { interval, days }),
		cost: known?.cost === null ? nameFigure(say`Cost`, null) : derive(cost, { interval, days }),
		weight_kg:
			kg === null ? nameFigure(say`To carry`, null) : derive(weight(kg), { interval, days }),
		lost_g: derive(lost, { interval, days }),
	};
}

/** Kilograms of a mL or g; a liquid without a density is taken as water; tablets are not known. */
function kgPerUnit({ form, density_kg_per_l }: ChlorineRow): number | null {
	if (form === "tablet") return null;
	return form === "powder" ? 0.001 : (density_kg_per_l ?? 1) / 1000;
}

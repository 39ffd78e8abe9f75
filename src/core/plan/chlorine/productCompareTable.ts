import { calculation, derive, type Figure, nameFigure } from "../../calculation.ts";
import type { Strength } from "../../chlorine/availableChlorine.ts";
import { type ComputedRow, type ComputedTable, onDemand } from "../../computedTable.ts";
import { valueIn } from "../../outcome.ts";
import { cellFigure } from "../../read/cellFigure.ts";
import { say } from "../../say.ts";
import type { ChlorineRow } from "../../sheets/chlorine.ts";
import { itemsSheet } from "../../sheets/items.ts";
import { productCompareSheet } from "../../sheets/productCompare.ts";
import { definition } from "../../source.ts";
import { sources } from "../../sources.ts";
import { inMeasure } from "../../stock/inMeasure.ts";
import type { Interval, Pack } from "../../stock/orderInterval.ts";
import { DAYS_PER_QUARTER, DAYS_PER_WEEK } from "../../values/date.ts";
import type { Pair } from "../countFigures.ts";
import type { UnitFigures } from "../unitFigures.ts";
import { bestInterval, INTERVALS } from "./bestInterval.ts";
import type { ProductFigures } from "./productFigures.ts";
import { strengthAfter } from "./strengthAfter.ts";

/** The longer of the periods, as the sheet names it. */
export const QUARTER = say`quarter`;
const PERIODS = [
	{ name: say`week`, days: DAYS_PER_WEEK },
	{ name: QUARTER, days: DAYS_PER_QUARTER },
];
const MEASURES = { liquid: "mL", powder: "g", tablet: "tablet" } as const;

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
const lost = overPeriod(
	"lost_g",
	say`Lost because strength was lost`,
	say`g chlorine`,
	(i) => i.lostGrams,
	3,
);
const weight = (kgPerUnit: number) =>
	overPeriod("weight_kg", say`To carry`, "kg", (i) => i.quantity * kgPerUnit, 700 * kgPerUnit);

const litresOver = calculation<{ perDay: number; days: number }, number>({
	key: "litres",
	label: say`Solution`,
	unit: "L",
	formula: say`Solution a day × days of the period.`,
	source: sources.madeUpTo,
	inputs: {
		perDay: { label: say`Solution a day, average`, unit: say`L/day`, min: 0 },
		days: { label: say`Days of the period`, unit: say`days`, min: 1 },
	},
	example: { inputs: { perDay: 5.5, days: DAYS_PER_WEEK }, result: 38.5, within: 1e-9 },
	compute: ({ perDay, days }) => perDay * days,
});

const perDay = calculation<{ litres: number; planDays: number }, number>({
	key: "litres_per_day",
	label: say`Solution a day, average`,
	unit: say`L/day`,
	formula: say`Average solution over the plan ÷ its days.`,
	source: sources.madeUpTo,
	inputs: {
		litres: { label: say`Solution, average`, unit: "L", min: 0 },
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
				targetPct: unit.startPct,
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

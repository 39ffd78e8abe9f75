import { calculation, derive, type Figure } from "../../calculation.ts";
import { measureOut, type Preparation } from "../../chlorine/measureOut.ts";
import { valueIn } from "../../outcome.ts";
import { cellFigure } from "../../read/cellFigure.ts";
import type { GoodRow } from "../../read/goodRow.ts";
import { listFigure } from "../../read/listFigure.ts";
import { say } from "../../say.ts";
import { type ItemsRow, itemsSheet } from "../../sheets/items.ts";
import type { WardSolutionRow } from "../../sheets/wardSolution.ts";
import { definition } from "../../source.ts";
import type { IsoDate } from "../../values/date.ts";
import { litresToMeasure } from "../chlorine/litresOfPreparation.ts";
import { preparationByLabel, preparationInUse, strongLots } from "../chlorine/lotPreparation.ts";
import type { ProductFigures } from "../chlorine/productFigures.ts";
import { productUse } from "../chlorine/productUse.ts";
import { wardUses } from "../chlorine/wardUses.ts";
import type { Pair } from "../countFigures.ts";
import { productOver } from "../productOver.ts";
import type { UnitFigures } from "../unitFigures.ts";
import { dailyUse, type Horizon, preparationsAhead } from "./horizon.ts";
import { isUseKnown, itemOver, useNotSaid, useOfItem } from "./useOfItem.ts";
import { useOfSingleUse } from "./useOfSingleUse.ts";

/** What is asked of an item. */
export interface ItemDemand {
	/** Over lead and review days, in the item's measure. */
	readonly use: Pair;
	/** Day by day over the horizon: in the item's measure, for the product in use in preparations. */
	readonly daily: Figure<number[]>;
}

/** What is asked of an item over the window of its order, and day by day. */
export function demandOf(
	unit: UnitFigures,
	ahead: Horizon,
	row: GoodRow<ItemsRow>,
	windowDays: Figure,
	serviceLevel: Figure,
): ItemDemand {
	// A part of a day is planned for as a whole one.
	const days = Math.min(Math.max(1, Math.ceil(valueIn(windowDays) ?? 1)), ahead.days.length);
	const demand = demandOver(unit, ahead, row, days, serviceLevel);
	if (windowDays.outcome.ok) return demand;
	// Nobody knows over how many days: no use over them, and not that of one.
	const notKnown = windowDays as Figure<never>;
	return { ...demand, use: { expected: notKnown, setAside: notKnown } };
}

function demandOver(
	unit: UnitFigures,
	ahead: Horizon,
	row: GoodRow<ItemsRow>,
	days: number,
	serviceLevel: Figure,
): ItemDemand {
	const { item } = row.value;
	const inUse = unit.productInUse;
	if ("row" in inUse && inUse.row.value.product === item)
		return productDemand(unit, inUse, ahead, row, days, serviceLevel);
	if (!isUseKnown(unit, item)) {
		const unknown = useNotSaid(unit);
		return { use: { expected: unknown, setAside: unknown }, daily: unknown };
	}
	return {
		use: itemOver(
			unit,
			item,
			{ rounds: ahead.rounds(days), days: ahead.days.slice(0, days) },
			serviceLevel,
		),
		daily: dailyUseOf(unit, item, ahead),
	};
}

/** By lines and for single use together, day by day. */
function dailyUseOf(unit: UnitFigures, item: string, ahead: Horizon): Figure<number[]> {
	const lines = derive(dailyUse, useOfItem(unit, item, ahead.rounds(ahead.days.length)));
	const single = useOfSingleUse(unit, item, ahead.days);
	return single ? derive(dailyBothWays, { lines, single: derive(dailyUse, single) }) : lines;
}

const dailyBothWays = calculation<
	{ lines: readonly number[]; single: readonly number[] },
	number[]
>({
	key: "daily_both_ways",
	label: say`Use of each day, average`,
	unit: say`in the item's measure`,
	formula: say`By its lines, and new for each kit used.`,
	source: definition,
	inputs: {
		lines: { label: say`What is used up`, unit: say`in the item's measure` },
		single: { label: say`New pieces for a kit used`, unit: say`in the item's measure` },
	},
	example: { inputs: { lines: [1, 0], single: [0.6, 0.6] }, result: [1.6, 0.6], within: 1e-12 },
	compute: ({ lines, single }) => lines.map((use, day) => use + (single[day] as number)),
});

/** From the lot to use first; where none is strong enough, as a fresh delivery makes it: that is what is ordered. */
function preparationToOrderFor(
	unit: UnitFigures,
	inUse: ProductFigures,
	day: IsoDate,
): Figure<Preparation> {
	const isStrong = strongLots(unit, inUse, day).length > 0;
	return isStrong ? preparationInUse(unit, day) : preparationByLabel(unit, inUse);
}

function productDemand(
	unit: UnitFigures,
	inUse: ProductFigures,
	ahead: Horizon,
	row: GoodRow<ItemsRow>,
	days: number,
	serviceLevel: Figure,
): ItemDemand {
	const window = ahead.days
		.slice(0, days)
		.map((day) => ({ ...day, preparation: preparationToOrderFor(unit, inUse, day.date) }));
	const kits = productOver(unit, window, serviceLevel);
	const ward = wardUses(
		unit,
		window.map((day) => day.date),
	);
	const measure = cellFigure(itemsSheet, row, "measure");
	return {
		use: productUse(preparationToOrderFor(unit, inUse, ahead.firstDay), measure, kits, ward),
		daily: derive(withWardPreparations, {
			preparations: preparationsAhead(ahead),
			share: wardShare(unit),
		}),
	};
}

const shareInputs = {
	ward: { label: say`The ward's other solution`, unit: say`L/day and %` },
	litres: measureOut.inputs.litres,
	targetPct: measureOut.inputs.targetPct,
};

interface ShareInputs {
	readonly ward: readonly Pick<WardSolutionRow, "litres_per_day" | "strength_pct">[];
	readonly litres: number;
	readonly targetPct: number;
}

const asPreparations = calculation<ShareInputs, number>({
	key: "ward_share",
	label: say`The ward's other solution, as preparations a day`,
	unit: say`preparations`,
	formula: say`Litres a day × strength, all other uses added up, ÷ (litres of a preparation × strength of the soak).`,
	source: definition,
	inputs: shareInputs,
	example: {
		inputs: { ward: [{ litres_per_day: 20, strength_pct: 0.1 }], litres: 8, targetPct: 0.5 },
		result: 0.5,
		within: 1e-12,
	},
	compute: ({ ward, litres, targetPct }) =>
		ward.reduce((sum, use) => sum + use.litres_per_day * use.strength_pct, 0) /
		(litres * targetPct),
});

/** A use that cannot be read leaves the share without a value: the product would run out sooner than planned. */
function wardShare({ read, startPct }: UnitFigures): Figure {
	const { label, unit } = shareInputs.ward;
	return derive(asPreparations, {
		ward: listFigure(label, unit, read.tables.wardSolution, (rows) =>
			rows.map(({ value: { litres_per_day, strength_pct } }) => ({ litres_per_day, strength_pct })),
		),
		litres: litresToMeasure(read),
		targetPct: startPct,
	});
}

const withWardPreparations = calculation<
	{ preparations: readonly number[]; share: number },
	number[]
>({
	key: "preparations_with_ward",
	label: say`Preparations of each day, with the ward's other solution`,
	unit: say`preparations`,
	formula: say`Average preparations + the ward's other solution, as preparations of the same chlorine.`,
	source: definition,
	inputs: {
		preparations: { label: say`Preparations of each day, average`, unit: say`preparations` },
		share: {
			label: say`The ward's other solution, as preparations a day`,
			unit: say`preparations`,
		},
	},
	example: { inputs: { preparations: [1, 1.5], share: 0.25 }, result: [1.25, 1.75], within: 0 },
	compute: ({ preparations, share }) => preparations.map((day) => day + share),
});

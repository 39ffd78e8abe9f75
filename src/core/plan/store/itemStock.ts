import { calculation, derive, type Figure, gather } from "../../calculation.ts";
import { cellFigure } from "../../read/cellFigure.ts";
import type { GoodRow } from "../../read/goodRow.ts";
import { say } from "../../say.ts";
import { type ItemsRow, itemsSheet } from "../../sheets/items.ts";
import { commonPractice } from "../../source.ts";
import { sources } from "../../sources.ts";
import { monthsOfStock } from "../../stock/monthsOfStock.ts";
import { orderPacks } from "../../stock/orderPacks.ts";
import { type ProjectedLot, type Projection, project } from "../../stock/projection.ts";
import { targetStock } from "../../stock/targetStock.ts";
import { dailyWithWastage, useWithWastage } from "../../stock/withWastage.ts";
import { sumOfAll } from "../../sumOfAll.ts";
import { total } from "../../total.ts";
import type { Pair } from "../countFigures.ts";
import type { UnitFigures } from "../unitFigures.ts";
import type { Horizon } from "./horizon.ts";
import { demandOf } from "./itemDemand.ts";
import { longestWait } from "./longestWait.ts";
import { lotsAhead } from "./lotsAhead.ts";
import { lotsToCount } from "./lotsToCount.ts";

/** How an item of the store stands, and what to order. */
export interface ItemStock {
	readonly row: GoodRow<ItemsRow>;
	/** Days from ordering to delivery, and until the next order. */
	readonly windowDays: Figure;
	/** Use over those days, at the item's service level. */
	readonly use: Pair;
	/** Its average as stock is compared with it: what is wasted leaves the store too. */
	readonly useWithWastage: Figure;
	readonly target: Figure;
	readonly usable: Figure;
	readonly onOrder: Figure;
	/** The part of it whose day has passed. */
	readonly overdue: Figure;
	/** Days until all is here that comes before an order of today would; 0 where nothing does. */
	readonly nextDelivery: Figure;
	readonly packs: Figure;
	readonly monthsOfStock: Figure;
	readonly lots: Figure<ProjectedLot[]>;
	/** Use of each day looked at, wastage included: in the item's measure, for the product in use in preparations. */
	readonly daily: Figure<number[]>;
	readonly projection: Figure<Projection>;
}

/** What is worked out of an item. */
export const partsOfStock = [
	"windowDays",
	"use",
	"useWithWastage",
	"target",
	"usable",
	"onOrder",
	"overdue",
	"nextDelivery",
	"packs",
	"monthsOfStock",
	"lots",
	"daily",
	"projection",
] as const satisfies readonly (keyof Omit<ItemStock, "row">)[];

const windowOf = total("window_days", say`Delivery days and days between orders`, say`days`);

/** Ten of a lot that ends after the second day, ten of one that lasts, ten to come; 4 go each day. */
const oldLot: ProjectedLot = {
	name: "A",
	quantity: 10,
	from: 0,
	last: 1,
	ends: "out of date",
	perUnit: () => 1,
};
const newLot: ProjectedLot = { ...oldLot, name: "B", last: 100 };
const lotToCome: ProjectedLot = { ...newLot, name: "C", from: 3 };
const example: Projection = {
	stock: [16, 12, 6],
	runOut: null,
	waste: [{ lot: "A", day: 2, quantity: 2, why: "out of date" }],
};

const project_ = calculation<
	{ lots: readonly ProjectedLot[]; demand: readonly number[] },
	Projection
>({
	key: "projection",
	label: say`Stock day by day`,
	unit: say`in the item's measure`,
	formula: say`Each day's average use, wastage included, is taken from the lot that expires first, of those that end on one day by their marks; a lot counts from the day it arrives, and is waste after its last day.`,
	source: sources.firstExpiredFirstOut,
	inputs: {
		lots: { label: say`Lots`, unit: say`in the item's measure` },
		demand: { label: dailyWithWastage.label, unit: dailyWithWastage.unit },
	},
	example: { inputs: { lots: [oldLot, newLot], demand: [4, 4, 4] }, result: example, within: 0 },
	compute: ({ lots, demand }) => project(lots, demand),
});

interface UsableInputs {
	readonly lots: readonly ProjectedLot[];
	readonly projection: Projection;
	readonly windowDays: number;
}

interface ArrivingInputs extends UsableInputs {
	readonly overdue: number;
}

const usableNow = calculation<UsableInputs, number>({
	key: "usable",
	label: say`Usable stock`,
	unit: say`in the item's measure`,
	formula: say`Lots in the store, in date and strong enough on the first day, less what of them would go out of date unused before the next order comes in.`,
	source: sources.firstExpiredFirstOut,
	inputs: {
		lots: { label: say`Lots`, unit: say`in the item's measure` },
		projection: { label: say`Stock day by day`, unit: say`in the item's measure` },
		windowDays: { label: say`Delivery days and days between orders`, unit: say`days`, min: 0 },
	},
	example: {
		inputs: { lots: [oldLot, newLot, lotToCome], projection: example, windowDays: 7 },
		result: 18,
		within: 0,
	},
	compute: ({ lots, projection, windowDays }) => {
		const here = lots.filter((lot) => lot.from <= 0 && lot.last >= 0);
		return usedInTime(here, projection, windowDays);
	},
});

/** Quantity of some lots less what of it goes out of date unused before the next order comes in. */
function usedInTime(
	lots: readonly ProjectedLot[],
	{ waste }: Projection,
	windowDays: number,
): number {
	const names = new Set(lots.map((lot) => lot.name));
	const wasted = waste.filter(({ lot, day }) => day > 0 && day <= windowDays && names.has(lot));
	const quantityOf = ({ quantity }: { readonly quantity: number }) => quantity;
	return Math.max(0, sumOfAll(lots.map(quantityOf)) - sumOfAll(wasted.map(quantityOf)));
}

const arriving = calculation<ArrivingInputs, number>({
	key: "on_order",
	label: say`On the way`,
	unit: say`in the item's measure`,
	formula: say`Lots and orders that arrive after the first day and before the next order comes in, less what of them would go out of date unused by then, and what is overdue.`,
	source: sources.periodicReview,
	inputs: {
		lots: { label: say`Lots`, unit: say`in the item's measure` },
		projection: { label: say`Stock day by day`, unit: say`in the item's measure` },
		windowDays: { label: say`Delivery days and days between orders`, unit: say`days`, min: 0 },
		overdue: {
			label: say`Overdue: on the way, its day has passed`,
			unit: say`in the item's measure`,
			min: 0,
		},
	},
	example: {
		inputs: { lots: [oldLot, newLot, lotToCome], projection: example, windowDays: 7, overdue: 4 },
		result: 14,
		within: 0,
	},
	compute: ({ lots, projection, windowDays, overdue }) => {
		const coming = lots.filter(
			(lot) => lot.from > 0 && lot.from < windowDays && lot.last >= lot.from,
		);
		return usedInTime(coming, projection, windowDays) + overdue;
	},
});

const perDay = calculation<{ use: number; days: number }, number>({
	key: "use_per_day",
	label: say`Mean use a day`,
	unit: say`in the item's measure a day`,
	formula: say`Average use over delivery days and days between orders, wastage included, ÷ those days.`,
	source: sources.monthsOfStock,
	inputs: {
		use: { label: useWithWastage.label, unit: useWithWastage.unit, min: 0 },
		days: { label: say`Delivery days and days between orders`, unit: say`days`, min: 1e-9 },
	},
	example: { inputs: { use: 35, days: 14 }, result: 2.5, within: 1e-12 },
	compute: ({ use, days }) => use / days,
});

const lastDelivery = calculation<{ lots: readonly ProjectedLot[]; leadDays: number }, number>({
	key: "last_delivery",
	label: say`Days until what is on the way has come`,
	unit: say`days`,
	formula: say`Of the lots and orders that arrive before an order of today could, the last one's days; 0 where there is none.`,
	source: commonPractice,
	inputs: {
		lots: { label: say`Lots`, unit: say`in the item's measure` },
		leadDays: { label: say`Days from order to delivery`, unit: say`days`, min: 0 },
	},
	example: { inputs: { lots: [oldLot, lotToCome], leadDays: 7 }, result: 3, within: 0 },
	compute: ({ lots, leadDays }) =>
		Math.max(0, ...lots.map(({ from }) => from).filter((from) => from <= leadDays)),
});

/** How one item stands. */
export function itemStock(unit: UnitFigures, ahead: Horizon, row: GoodRow<ItemsRow>): ItemStock {
	const wait = longestWait(row);
	const cell = (column: "wastage_pct" | "service_level" | "pack_size") =>
		cellFigure(itemsSheet, row, column);
	const windowDays = derive(windowOf, {
		parts: gather(say`Parts`, say`days`, {
			lead: wait,
			review: unit.read.settings.review_days,
		}),
	});
	const demand = demandOf(unit, ahead, row, windowDays, cell("service_level"));
	const counted = lotsToCount(unit, ahead.firstDay, row.value.item);
	const lots = lotsAhead(unit, ahead, row.value.item, counted.lots);
	const wastagePct = cell("wastage_pct");
	const daily = derive(dailyWithWastage, { daily: demand.daily, wastagePct });
	const used = derive(useWithWastage, { use: demand.use.expected, wastagePct });
	const projection = derive(project_, { lots, demand: daily });
	const target = derive(targetStock, { use: demand.use.setAside, wastagePct });
	const usable = derive(usableNow, { lots, projection, windowDays });
	const { overdue } = counted;
	const onOrder = derive(arriving, { lots, projection, windowDays, overdue });
	const usePerDay = derive(perDay, { use: used, days: windowDays });
	return {
		row,
		windowDays,
		use: demand.use,
		useWithWastage: used,
		target,
		usable,
		onOrder,
		overdue,
		nextDelivery: derive(lastDelivery, { lots, leadDays: wait }),
		packs: derive(orderPacks, { target, usable, onOrder, packSize: cell("pack_size") }),
		monthsOfStock: derive(monthsOfStock, { usable, usePerDay }),
		lots,
		daily,
		projection,
	};
}

import { calculation, derive, type Figure, nameFigure } from "../../calculation.ts";
import { type ComputedRow, type ComputedTable, onDemand } from "../../computedTable.ts";
import { countTimes } from "../../countTimes.ts";
import { valueIn } from "../../outcome.ts";
import { cellFigure, givenFigure } from "../../read/cellFigure.ts";
import { rowOnDemand, withCellsOnDemand } from "../../rowOnDemand.ts";
import { say } from "../../say.ts";
import { itemsSheet } from "../../sheets/items.ts";
import { orderSheet } from "../../sheets/order.ts";
import { commonPractice, definition } from "../../source.ts";
import type { Projection } from "../../stock/projection.ts";
import { useWithWastage } from "../../stock/withWastage.ts";
import { addDays, type IsoDate } from "../../values/date.ts";
import { freshStaysStrong } from "../chlorine/strengthAfter.ts";
import type { UnitFigures } from "../unitFigures.ts";
import { countAge, daysNotCounted } from "./countAge.ts";
import { inSight } from "./horizon.ts";
import type { ItemStock } from "./itemStock.ts";
import { keptSince } from "./keptSince.ts";
import { longestWait, longestWaitDays } from "./longestWait.ts";
import type { ItemOfOrder } from "./orderBudget.ts";
import { orderRemark } from "./orderRemark.ts";
import type { StoreFigures } from "./storeFigures.ts";
import { type TakenCells, takenCells, takenColumns } from "./takenCells.ts";

const packs = { label: say`Packs to order`, unit: say`packs` };
const quantity = countTimes(
	"order_quantity",
	say`Quantity to order`,
	say`in the item's measure`,
	packs,
	{
		label: say`Pack size`,
		unit: say`in the item's measure`,
	},
);
const cost = countTimes("cost", say`Cost`, say`currency`, packs, {
	label: say`Price of a pack`,
	unit: say`currency`,
});

const runOutOn = calculation<{ projection: Projection; firstDay: IsoDate }, string>({
	key: "run_out_on",
	label: say`Runs out on`,
	unit: "",
	formula: say`First day whose average use, wastage included, is more than what is usable; blank where every day looked at is covered.`,
	source: commonPractice,
	inputs: {
		projection: { label: say`Stock day by day`, unit: say`in the item's measure` },
		firstDay: { label: say`First day`, unit: "" },
	},
	example: {
		inputs: { projection: { stock: [20, 10, 0], runOut: 12, waste: [] }, firstDay: "2027-03-01" },
		result: "2027-03-13",
		within: 0,
	},
	compute: ({ projection, firstDay }) =>
		projection.runOut === null ? "" : addDays(firstDay, projection.runOut),
});

interface OrderByInputs {
	readonly projection: Projection;
	readonly firstDay: IsoDate;
	readonly target: number;
	readonly use: number;
	readonly leadDays: number;
	readonly nextDelivery: number;
	readonly overdue: number;
}

const orderBy = calculation<OrderByInputs, string>({
	key: "order_by",
	label: say`Order by`,
	unit: "",
	formula: say`First day on which stock, what is overdue included, falls below the reserve (target stock − average use over delivery days and days between orders, wastage in both), less the days to delivery; what comes before an order of today could is waited for, but no day that stock does not cover. Blank where there is no such day among those looked at.`,
	source: commonPractice,
	rounding: say`Down to the earlier day.`,
	inputs: {
		projection: { label: say`Stock day by day`, unit: say`in the item's measure` },
		firstDay: { label: say`First day`, unit: "" },
		target: { label: say`Target stock`, unit: say`in the item's measure`, min: 0 },
		use: { label: useWithWastage.label, unit: useWithWastage.unit, min: 0 },
		leadDays: { label: say`Days from order to delivery`, unit: say`days`, min: 0 },
		nextDelivery: {
			label: say`Days until what is on the way has come`,
			unit: say`days`,
			min: 0,
		},
		overdue: {
			label: say`Overdue: on the way, its day has passed`,
			unit: say`in the item's measure`,
			min: 0,
		},
	},
	example: {
		// Below the reserve of 15 on the third day, 3 March; 7 days to delivery.
		inputs: {
			projection: { stock: [30, 20, 10, 0], runOut: null, waste: [] },
			firstDay: "2027-03-01",
			target: 40,
			use: 25,
			leadDays: 7,
			nextDelivery: 0,
			overdue: 0,
		},
		result: "2027-02-24",
		within: 0,
	},
	compute: ({ projection, firstDay, target, use, leadDays, nextDelivery, overdue }) => {
		const reserve = Math.max(0, target - use);
		const touched = projection.stock.findIndex(
			(stock, day) => day >= nextDelivery && stock + overdue < reserve,
		);
		const days = [projection.runOut ?? -1, touched].filter((day) => day >= 0);
		return days.length === 0 ? "" : addDays(firstDay, Math.floor(Math.min(...days) - leadDays));
	},
});

/** One row for each item. */
export function orderTable(
	unit: UnitFigures,
	{ items, budget }: Pick<StoreFigures, "items" | "budget">,
	firstDay: IsoDate,
): ComputedTable<typeof orderSheet> {
	return onDemand(orderSheet, () =>
		items().map((item, at) =>
			rowOnDemand(orderSheet, () =>
				withCellsOnDemand(rowOf(unit, item, firstDay), takenColumns, () =>
					takenCells(unit, budget().items[at] as ItemOfOrder, firstDay),
				),
			),
		),
	);
}

function rowOf(
	unit: UnitFigures,
	item: ItemStock,
	day: IsoDate,
): Omit<ComputedRow<typeof orderSheet>, keyof TakenCells> {
	const { row } = item;
	const firstDay = nameFigure(say`First day`, day);
	const { projection, target } = item;
	const leadDays = longestWait(row);
	const ordered = derive(orderBy, {
		projection,
		firstDay,
		target,
		use: item.useWithWastage,
		leadDays,
		nextDelivery: item.nextDelivery,
		overdue: item.overdue,
	});
	const counted = countAge(unit.read, row.value.item, day);
	const price = givenFigure(itemsSheet, row, "pack_price");
	const ahead = valueIn(projection);
	const isEmergency =
		ahead && (ahead.runOut ?? Number.POSITIVE_INFINITY) < longestWaitDays(row.value);
	const packSize = cellFigure(itemsSheet, row, "pack_size");
	return {
		item: cellFigure(itemsSheet, row, "item"),
		measure: cellFigure(itemsSheet, row, "measure"),
		usable: item.usable,
		on_order: item.onOrder,
		use_expected: item.use.expected,
		target_stock: target,
		order_packs: item.packs,
		order_quantity: derive(quantity, { count: item.packs, each: packSize }),
		cost:
			price === undefined
				? nameFigure(say`Cost`, null)
				: derive(cost, { count: item.packs, each: price }),
		run_out_on: inSight(unit, derive(runOutOn, { projection, firstDay })),
		order_by: inSight(unit, ordered),
		months_of_stock: hasUse(item) ? item.monthsOfStock : nameFigure(say`Months of stock`, null),
		remark: derive(orderRemark, {
			projection,
			lots: item.lots,
			firstDay,
			orderBy: ordered,
			knownSince: nameFigure(say`Kept with this workbook since`, keptSince(unit.read.tables, day)),
			packs: item.packs,
			packSize,
			usable: item.usable,
			onOrder: item.onOrder,
			overdue: item.overdue,
			notCountedDays: daysNotCounted(unit.read, row.value.item, day),
			use: item.useWithWastage,
			windowDays: item.windowDays,
			leadDays,
			keepsDays: keepsDays(unit, item),
		}),
		emergency: nameFigure(
			say`Runs out before an order can arrive`,
			isEmergency === undefined ? null : isEmergency ? "yes" : "no",
		),
		last_counted: nameFigure(say`Last counted`, counted?.day ?? ""),
		pack_size: packSize,
		pack_price: price ?? nameFigure(say`Price of a pack`, null),
		unit_name: unit.read.settings.unit_name as Figure<string>,
	};
}

/** Stock of something nobody uses lasts for no number of months. */
function hasUse({ use }: ItemStock): boolean {
	return !use.expected.outcome.ok || use.expected.outcome.value > 0;
}

const keepsFor = calculation<
	{ shelfDays: number | null; strongDays: number | null },
	number | null
>({
	key: "keeps_days",
	label: say`A new lot keeps for`,
	unit: say`days`,
	formula: say`Its shelf life, and for a chlorine product no longer than it stays strong enough; blank where neither is known to end.`,
	source: definition,
	inputs: {
		shelfDays: { label: say`Shelf life of a new lot`, unit: say`days` },
		strongDays: { label: say`A fresh delivery stays strong enough for`, unit: say`days` },
	},
	example: { inputs: { shelfDays: 365, strongDays: 120 }, result: 120, within: 0 },
	compute: ({ shelfDays, strongDays }) =>
		shelfDays === null || strongDays === null
			? (shelfDays ?? strongDays)
			: Math.min(shelfDays, strongDays),
});

function keepsDays(unit: UnitFigures, { row }: ItemStock): Figure<number | null> {
	const shelfDays = cellFigure(itemsSheet, row, "shelf_life_days");
	const product = unit.products.find((each) => each.row.value.product === row.value.item);
	if (!product?.strength.outcome.ok) return shelfDays;
	return derive(keepsFor, { shelfDays, strongDays: freshStaysStrong(unit, product) });
}

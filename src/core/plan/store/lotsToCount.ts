import { derive, type Figure, gather, nameFigure } from "../../calculation.ts";
import type { Strength } from "../../chlorine/availableChlorine.ts";
import { countTimes } from "../../countTimes.ts";
import { Grouped } from "../../grouped.ts";
import { memoizeByObject } from "../../memoize.ts";
import { cellFigure } from "../../read/cellFigure.ts";
import type { GoodRow } from "../../read/goodRow.ts";
import { say } from "../../say.ts";
import { type ItemsRow, itemsSheet } from "../../sheets/items.ts";
import { placedSheet } from "../../sheets/placed.ts";
import type { ListedLot } from "../../stock/lotsInStore.ts";
import { total } from "../../total.ts";
import { addDays, type IsoDate } from "../../values/date.ts";
import type { ProductFigures } from "../chlorine/productFigures.ts";
import { strengthOfLot, strengthOnDay } from "../chlorine/strengthOfLot.ts";
import type { UnitFigures } from "../unitFigures.ts";
import { itemsByName } from "./itemsByName.ts";
import {
	arrivesOn,
	isOverdue,
	isOverdueAndOutOfDate,
	type LotOnHand,
	lotsOnHand,
} from "./lotsOnHand.ts";
import { type OrderOnTheWay, ordersOnTheWay } from "./ordersOnTheWay.ts";

/** A lot that stock is counted with: in the store, or on its way. */
export interface LotToCount {
	/** What no other of the item is called. */
	readonly key: string;
	readonly quantity: Figure;
	readonly listed: ListedLot;
	readonly strengthOn: (product: ProductFigures, day: IsoDate) => Figure<Strength>;
}

/** The lots of an item, and what of it is overdue. */
export interface LotsToCount {
	readonly lots: readonly LotToCount[];
	/** On its way although its day has passed: on order unless it is out of date by now, and in no day's stock until somebody says when it comes. */
	readonly overdue: Figure;
}

const inMeasure = say`in the item's measure`;

const overdueOf = total("overdue", say`Overdue: on the way, its day has passed`, inMeasure);

const quantityOfOrder = countTimes(
	"quantity_on_its_way",
	say`On the way`,
	inMeasure,
	{ label: placedSheet.columns.packs.label, unit: say`packs` },
	{ label: itemsSheet.columns.pack_size.label, unit: inMeasure },
);

/** With thousands of items, each would search all lots for its own. */
const byItem = memoizeByObject(
	<T extends { readonly row: GoodRow<{ readonly item: string }> }>(all: readonly T[]) => {
		const found = new Grouped<string, T>();
		for (const each of all) found.add(each.row.value.item, each);
		return found;
	},
) as <T extends { readonly row: GoodRow<{ readonly item: string }> }>(
	all: readonly T[],
) => Grouped<string, T>;

/** Every lot and order of an item; undefined where the store does not list the item. */
export function lotsToCount(unit: UnitFigures, firstDay: IsoDate, item: string): LotsToCount {
	const { read } = unit;
	const listed = itemsByName(read.tables.items).get(item);
	const keepsDays = listed?.value.shelf_life_days ?? null;
	const stored = byItem(lotsOnHand(read)).of(item);
	const orders = byItem(ordersOnTheWay(read.tables)).of(item);
	const packSize = listed && cellFigure(itemsSheet, listed, "pack_size");
	const quantityOf = ({ row }: OrderOnTheWay): Figure =>
		derive(quantityOfOrder, {
			count: cellFigure(placedSheet, row, "packs"),
			each: packSize as Figure,
		});
	const overdue = [
		...stored
			.filter((lot) => isOverdue(lot, firstDay) && !isOverdueAndOutOfDate(lot, firstDay))
			.map((lot) => [`${lot.row.line}`, ofLot(lot)] as const),
		...orders
			.filter(({ expectedOn }) => expectedOn < firstDay)
			.map((order) => [keyOf(order), ofOrder(order, quantityOf(order))] as const),
	];
	const lots = [
		...stored
			.filter((lot) => !isOverdue(lot, firstDay))
			.map((lot) => lotInStore(unit, lot, keepsDays)),
		...orders
			.filter(({ expectedOn }) => expectedOn >= firstDay)
			.map((order) => lotToCome(unit, order, quantityOf(order), firstDay, keepsDays)),
	];
	return {
		lots,
		overdue: derive(overdueOf, {
			parts: gather(overdueOf.label, inMeasure, Object.fromEntries(overdue)),
		}),
	};
}

function ofLot({ row, onHand }: LotOnHand): Figure {
	return { ...onHand, label: say`Lot ${row.value.lot}` };
}

function ofOrder({ row }: OrderOnTheWay, quantity: Figure): Figure {
	return { ...quantity, label: say`Ordered on ${row.value.ordered_on}` };
}

function keyOf({ row }: OrderOnTheWay): string {
	return `order ${row.line}`;
}

function lotInStore({ read }: UnitFigures, lot: LotOnHand, keepsDays: number | null): LotToCount {
	const { row } = lot;
	const { lot: name, expires_on: expires } = row.value;
	const arrives = arrivesOn(lot);
	return {
		key: String(row.line),
		quantity: ofLot(lot),
		listed: {
			lot: name,
			arrives_on: arrives,
			expires_on: expires ?? (arrives === null ? null : lastDay(arrives, keepsDays)),
		},
		strengthOn: (product, day) => strengthOfLot(read, product, row, day),
	};
}

/** What was ordered, as fresh as on the day it comes; never counted before the day after the first. */
function lotToCome(
	{ read }: UnitFigures,
	order: OrderOnTheWay,
	quantity: Figure,
	firstDay: IsoDate,
	keepsDays: number | null,
): LotToCount {
	const { expectedOn } = order;
	const arrives = expectedOn > firstDay ? expectedOn : addDays(firstDay, 1);
	return {
		key: keyOf(order),
		quantity: ofOrder(order, quantity),
		listed: {
			lot: orderAsLot(order),
			arrives_on: arrives,
			expires_on: lastDay(arrives, keepsDays),
		},
		strengthOn: (product, day) =>
			strengthOnDay(read, product, nameFigure(say`Due on`, arrives), day),
	};
}

/** By what it is, not by its line: in which row an order stands must not decide what is used first. */
function orderAsLot({ row, expectedOn }: OrderOnTheWay): string {
	const { ordered_on: day, packs } = row.value;
	return packs === 1
		? say`of the order of ${day}, 1 pack due on ${expectedOn}`
		: say`of the order of ${day}, ${packs} packs due on ${expectedOn}`;
}

export function lastDay(arrives: IsoDate, keepsDays: ItemsRow["shelf_life_days"]): IsoDate | null {
	return keepsDays === null ? null : addDays(arrives, Math.floor(keepsDays));
}

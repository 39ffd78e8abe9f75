import { calculation, derive, type Figure, gather, nameFigure } from "../../calculation.ts";
import { memoizeByObject } from "../../memoize.ts";
import { cellFigure, givenFigure } from "../../read/cellFigure.ts";
import { refuse } from "../../refusal.ts";
import { say } from "../../say.ts";
import { itemsSheet } from "../../sheets/items.ts";
import { definition } from "../../source.ts";
import { type RunsOut, runsOutWith } from "../../stock/runsOutWith.ts";
import { type Stopped, stopsWithout } from "../../stock/stopsWithout.ts";
import { type TakeStep, takeFirst, type WantedItem } from "../../stock/takeFirst.ts";
import type { UnitFigures } from "../unitFigures.ts";
import type { Horizon } from "./horizon.ts";
import type { ItemStock } from "./itemStock.ts";
import { lotOfOrder } from "./lotOfOrder.ts";
import { lotsAhead } from "./lotsAhead.ts";
import { useOfItem } from "./useOfItem.ts";
import { useOfSingleUse } from "./useOfSingleUse.ts";

/** What becomes of the order with the money and the packs there are. */
export interface OrderBudget {
	readonly items: readonly ItemOfOrder[];
	/** Packs in the order in which to take them, of all items that can be reckoned with. */
	readonly steps: Figure<TakeStep[]>;
}

export interface ItemOfOrder {
	readonly stock: ItemStock;
	readonly stops: Figure<Stopped>;
	readonly runsOut: Figure<RunsOut>;
	/** Packs taken of those ordered. */
	readonly taken: Figure;
}

interface Wanted extends Omit<WantedItem, "packs"> {
	readonly ordered: number;
	/** null where the depot sends all. */
	readonly sent: number | null;
	readonly money: number | null;
}

const wantedItem = calculation<Wanted, WantedItem>({
	key: "wanted_item",
	label: say`Packs that can be had`,
	unit: say`packs`,
	formula: say`Packs to order, at most what the depot sends. Where money is counted, a pack without a price has no place in the order of taking: its cost is not known, and never 0.`,
	source: definition,
	inputs: {
		item: { label: say`Item`, unit: "" },
		stops: { label: say`What stops without it`, unit: "" },
		price: { label: say`Price of a pack`, unit: say`currency` },
		ordered: { label: say`Packs to order`, unit: say`packs`, min: 0 },
		sent: { label: say`The depot sends at most`, unit: say`packs` },
		runsOut: { label: runsOutWith.label, unit: runsOutWith.unit },
		money: { label: say`Money for this order`, unit: say`currency` },
	},
	example: {
		inputs: {
			item: "soap",
			stops: "safe_rounds",
			price: 2,
			ordered: 5,
			sent: 3,
			runsOut: { each: 1, days: [5] },
			money: 7,
		},
		result: {
			item: "soap",
			stops: "safe_rounds",
			price: 2,
			packs: 3,
			runsOut: { each: 1, days: [5] },
		},
		within: 0,
	},
	compute: ({ item, stops, price, ordered, sent, runsOut, money }) => {
		const packs = Math.min(ordered, sent ?? ordered);
		if (money !== null && price === null && packs > 0)
			return refuse({
				code: "price-not-known",
				received: say`no price`,
				allowed: say`the price of a pack`,
				message: say`A pack of ${item} has no price in “${itemsSheet.title}”, so nothing tells whether the money pays for it.`,
			});
		return { item, stops, price, packs, runsOut };
	},
});

const takenOf = calculation<{ wanted: WantedItem; steps: readonly TakeStep[] }, number>({
	key: "packs_taken",
	label: say`Take`,
	unit: say`packs`,
	formula: say`Its packs that the money pays for, added up.`,
	source: definition,
	inputs: {
		wanted: { label: wantedItem.label, unit: wantedItem.unit },
		steps: { label: takeFirst.label, unit: takeFirst.unit },
	},
	example: {
		inputs: {
			wanted: {
				item: "A",
				stops: "safe_rounds",
				price: 1,
				packs: 9,
				runsOut: { each: 1, days: [] },
			},
			steps: [
				{ item: "A", packs: 2, cost: 2, day: 1, paid: true, spent: 2 },
				{ item: "B", packs: 4, cost: 8, day: 2, paid: true, spent: 10 },
				{ item: "A", packs: 3, cost: 3, day: 5, paid: true, spent: 13 },
				{ item: "A", packs: 4, cost: 4, day: 9, paid: false, spent: 13 },
			],
		},
		result: 5,
		within: 0,
	},
	compute: ({ wanted, steps }) => packsPaid(steps).get(wanted.item) ?? 0,
});

/** Packs paid for of each item. */
const packsPaid = memoizeByObject((steps: readonly TakeStep[]) => {
	const packsOf = new Map<string, number>();
	for (const { item, packs, paid } of steps)
		if (paid) packsOf.set(item, (packsOf.get(item) ?? 0) + packs);
	return packsOf;
});

/** Shares the money out over the order. */
export function orderBudget(
	unit: UnitFigures,
	ahead: Horizon,
	stocks: readonly ItemStock[],
): OrderBudget {
	const money = unit.read.settings.order_money;
	const items = stocks.map((stock) => wantedOf(unit, ahead, stock));
	const countable = items.filter(({ wanted }) => wanted.outcome.ok);
	const steps = derive(takeFirst, {
		items: gather(
			say`Items to order`,
			say`packs`,
			Object.fromEntries(
				countable.map(({ stock, wanted }) => [stock.row.value.item, wanted] as const),
			),
		),
		money,
	});
	return {
		steps,
		items: items.map(({ wanted, ...item }) => ({
			...item,
			taken: derive(takenOf, { wanted, steps }),
		})),
	};
}

function wantedOf(unit: UnitFigures, ahead: Horizon, stock: ItemStock) {
	const { row, lots, daily, packs } = stock;
	const { item } = row.value;
	const stops = derive(stopsWithout, {
		rates: useOfItem(unit, item, ahead.rounds(1)).rates,
		newPieces: nameFigure(
			say`New pieces for a kit used`,
			useOfSingleUse(unit, item, ahead.days) !== undefined,
		),
		isMixedFrom: nameFigure(
			say`Chlorine product in use`,
			"row" in unit.productInUse && unit.productInUse.row.value.product === item,
		),
		said: cellFigure(itemsSheet, row, "round_needs_it"),
	});
	const runsOut = derive(runsOutWith, {
		lots,
		delivered: lotsAhead(unit, ahead, item, [lotOfOrder(unit, row, packs, ahead.firstDay)]),
		demand: daily,
		packs,
		packSize: cellFigure(itemsSheet, row, "pack_size"),
	});
	const price = givenFigure(itemsSheet, row, "pack_price");
	const wanted = derive(
		wantedItem,
		{
			item: cellFigure(itemsSheet, row, "item"),
			stops,
			price: price ?? nameFigure(say`Price of a pack`, null),
			ordered: packs,
			sent: cellFigure(itemsSheet, row, "depot_packs"),
			runsOut,
			money: unit.read.settings.order_money,
		},
		{ file: itemsSheet.file, line: row.line, column: "pack_price" },
	);
	return { stock, stops, runsOut, wanted };
}

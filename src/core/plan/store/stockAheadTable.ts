import { calculation, derive, type Figure, nameFigure } from "../../calculation.ts";
import { type ComputedRow, type ComputedTable, onDemand } from "../../computedTable.ts";
import { say } from "../../say.ts";
import { stockAheadSheet } from "../../sheets/stockAhead.ts";
import { sources } from "../../sources.ts";
import type { Projection } from "../../stock/projection.ts";
import { useWithWastage } from "../../stock/withWastage.ts";
import { addDays, DAYS_PER_WEEK, type IsoDate } from "../../values/date.ts";
import type { Horizon } from "./horizon.ts";
import type { ItemStock } from "./itemStock.ts";

const stockOn = calculation<{ projection: Projection; day: number }, number>({
	key: "stock_on",
	label: say`Usable`,
	unit: say`in the item's measure`,
	formula: say`Stock at the end of the day, the lot that expires first leaving first.`,
	source: sources.firstExpiredFirstOut,
	inputs: {
		projection: { label: say`Stock day by day`, unit: say`in the item's measure` },
		day: { label: say`Days from the first`, unit: say`days`, min: 0 },
	},
	example: {
		inputs: { projection: { stock: [30, 20, 10], runOut: null, waste: [] }, day: 2 },
		result: 10,
		within: 0,
	},
	compute: ({ projection, day }) => projection.stock[day] as number,
});

const reserve = calculation<{ target: number; use: number }, number>({
	key: "reserve",
	label: say`Reserve`,
	unit: say`in the item's measure`,
	formula: say`Target stock − average use over delivery days and days between orders, wastage in both.`,
	source: sources.periodicReview,
	inputs: {
		target: { label: say`Target stock`, unit: say`in the item's measure`, min: 0 },
		use: { label: useWithWastage.label, unit: useWithWastage.unit, min: 0 },
	},
	example: { inputs: { target: 40, use: 25 }, result: 15, within: 0 },
	compute: ({ target, use }) => Math.max(0, target - use),
});

/** Each item at the end of each week ahead. */
export function stockAheadTable(
	items: () => readonly ItemStock[],
	ahead: () => Horizon,
	firstDay: IsoDate,
): ComputedTable<typeof stockAheadSheet> {
	return onDemand(stockAheadSheet, () => {
		const weeks = Math.floor(ahead().days.length / DAYS_PER_WEEK);
		return items().flatMap((item) =>
			Array.from({ length: weeks }, (_, week) =>
				rowOf(item, firstDay, (week + 1) * DAYS_PER_WEEK - 1),
			),
		);
	});
}

function rowOf(
	item: ItemStock,
	firstDay: IsoDate,
	day: number,
): ComputedRow<typeof stockAheadSheet> {
	const days: Figure = nameFigure(say`Days from the first`, day);
	return {
		item: nameFigure(say`Item`, item.row.value.item),
		date: nameFigure(say`End of`, addDays(firstDay, day)),
		usable: derive(stockOn, { projection: item.projection, day: days }),
		reserve: derive(reserve, { target: item.target, use: item.useWithWastage }),
	};
}

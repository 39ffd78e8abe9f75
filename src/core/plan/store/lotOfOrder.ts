import { derive, type Figure, nameFigure } from "../../calculation.ts";
import { countTimes } from "../../countTimes.ts";
import { cellFigure } from "../../read/cellFigure.ts";
import type { GoodRow } from "../../read/goodRow.ts";
import { say } from "../../say.ts";
import { type ItemsRow, itemsSheet } from "../../sheets/items.ts";
import { addDays, type IsoDate } from "../../values/date.ts";
import { strengthOnDay } from "../chlorine/strengthOfLot.ts";
import type { UnitFigures } from "../unitFigures.ts";
import { longestWaitDays } from "./longestWait.ts";
import { type LotToCount, lastDay } from "./lotsToCount.ts";

const inMeasure = say`in the item's measure`;

const ordered = countTimes(
	"quantity_of_order",
	say`Ordered`,
	inMeasure,
	{ label: say`Packs to order`, unit: say`packs` },
	{ label: itemsSheet.columns.pack_size.label, unit: inMeasure },
);

/** What an order of the first day brings, as fresh as on the day it comes. */
export function lotOfOrder(
	{ read }: UnitFigures,
	row: GoodRow<ItemsRow>,
	packs: Figure,
	firstDay: IsoDate,
): LotToCount {
	const arrives = addDays(firstDay, Math.ceil(longestWaitDays(row.value)));
	return {
		key: "this-order",
		quantity: derive(ordered, { count: packs, each: cellFigure(itemsSheet, row, "pack_size") }),
		listed: {
			lot: say`of this order`,
			arrives_on: arrives,
			expires_on: lastDay(arrives, row.value.shelf_life_days),
		},
		strengthOn: (product, day) =>
			strengthOnDay(read, product, nameFigure(say`Due on`, arrives), day),
	};
}

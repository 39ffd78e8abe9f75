import { calculation, derive, nameFigure } from "../../calculation.ts";
import { valueIn } from "../../outcome.ts";
import { cellFigure } from "../../read/cellFigure.ts";
import { say } from "../../say.ts";
import { itemsSheet } from "../../sheets/items.ts";
import { definition } from "../../source.ts";
import type { ItemStock } from "../store/itemStock.ts";
import { short } from "./leverWords.ts";
import { priceOf } from "./priceEach.ts";
import { beyondOf, blank, type SafetyRow, safetyOf } from "./safetyRow.ts";

interface Inputs {
	readonly usable: number;
	readonly onOrder: number;
	readonly packs: number;
	readonly packSize: number;
}

const inputs = {
	usable: { label: say`Usable stock`, unit: say`in the item's measure` },
	onOrder: { label: say`On the way`, unit: say`in the item's measure` },
	packs: { label: say`Packs to order`, unit: say`packs` },
	packSize: { label: say`Pack size`, unit: say`in the item's measure` },
};
const ordered: Inputs = { usable: 30, onOrder: 10, packs: 2, packSize: 100 };

const stockThen = calculation<Inputs, number>({
	key: "stock_with_order",
	label: say`Stock when the order has come`,
	unit: say`in the item's measure`,
	formula: say`Usable + on the way + packs × pack size.`,
	source: definition,
	inputs,
	example: { inputs: ordered, result: 240, within: 0 },
	compute: ({ usable, onOrder, packs, packSize }) => usable + onOrder + packs * packSize,
});

const onePackLess = calculation<Inputs, number>({
	key: "one_pack_less",
	label: say`Stock with one pack less`,
	unit: say`in the item's measure`,
	formula: say`Usable + on the way + (packs − 1) × pack size.`,
	source: definition,
	inputs,
	example: { inputs: ordered, result: 140, within: 0 },
	compute: ({ usable, onOrder, packs, packSize }) => usable + onOrder + (packs - 1) * packSize,
});

/** What whole packs bring beyond what an order was for, where something is to be ordered. */
export function orderSafety(items: readonly ItemStock[]): SafetyRow[] {
	return items.flatMap(({ row, useWithWastage, target, usable, onOrder, packs }) => {
		if (!((valueIn(packs) ?? 0) > 0)) return [];
		const packSize = cellFigure(itemsSheet, row, "pack_size");
		const stock = { usable, onOrder, packs, packSize };
		const then = derive(stockThen, stock);
		const kept = safetyOf(then, target, derive(onePackLess, stock));
		if (!kept) return [];
		const { item, measure, pack_size } = row.value;
		return [
			{
				promise: nameFigure(say`What`, "order" as const),
				of: nameFigure(say`Of`, item),
				day: blank(say`Day`),
				set_aside: then,
				expected: useWithWastage,
				unit: nameFigure(say`Unit`, measure),
				...kept,
				...beyondOf(then, target, priceOf(row)),
				lever: nameFigure(
					say`What would change it`,
					valueIn(kept.far_safer) === "yes"
						? say`Packs of ${short(pack_size)} come whole; a smaller pack leaves less over.`
						: "",
				),
			},
		];
	});
}

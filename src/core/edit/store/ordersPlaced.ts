import { placedSheet } from "../../sheets/placed.ts";
import type { Workbook } from "../../workbook.ts";
import { wrongFor } from "../notAllowed.ts";
import { withRow } from "../withRow.ts";

/** An item with its packs to order, as typed; blank or 0 where none is. */
export interface OrderedItem {
	readonly item: string;
	readonly packs: string;
}

/** The workbook with its orders, or what keeps them from being written; a wrong day has no item. */
export type OrdersPlaced =
	| { readonly ok: true; readonly workbook: Workbook; readonly orders: number }
	| {
			readonly ok: false;
			readonly wrong: readonly { readonly item?: string; readonly words: string }[];
	  };

const { ordered_on, packs } = placedSheet.columns;

/** Writes that items were ordered on a day, a line each. */
export function ordersPlaced(
	workbook: Workbook,
	day: string,
	items: readonly OrderedItem[],
): OrdersPlaced {
	const given = items.filter(({ packs: typed }) => !["", "0"].includes(typed.trim()));
	const wrongDay = wrongFor(ordered_on, day);
	const wrong = [
		...(wrongDay === undefined ? [] : [{ words: wrongDay }]),
		...given.flatMap(({ item, packs: typed }) => {
			const words = wrongFor(packs, typed);
			return words === undefined ? [] : [{ item, words }];
		}),
	];
	if (wrong.length > 0 || given.length === 0) return { ok: false, wrong };
	const next = given.reduce(
		(before, { item, packs: typed }) =>
			withRow(before, placedSheet.file, { ordered_on: day.trim(), item, packs: typed.trim() }),
		workbook,
	);
	return { ok: true, workbook: next, orders: given.length };
}

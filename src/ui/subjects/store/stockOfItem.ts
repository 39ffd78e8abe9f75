import { storeBooks } from "../../../core/edit/store/storeBooks.ts";
import { rowsOf } from "../../../core/plan/rowsOf.ts";
import { arrivesOn, lotsOnHand } from "../../../core/plan/store/lotsOnHand.ts";
import { ordersOnTheWay } from "../../../core/plan/store/ordersOnTheWay.ts";
import { readWorkbook } from "../../../core/read/readWorkbook.ts";
import { stockAheadSheet } from "../../../core/sheets/stockAhead.ts";
import { numberIn, wordIn } from "../../state/numberIn.ts";
import type { State } from "../../state/store.ts";
import { unitSetting } from "../../state/unitSetting.ts";
import { type OrderLine, orderLines } from "../order/orderLines.ts";

/** Weeks shown one by one; further ahead, months say enough. */
const WEEKS_SHOWN = 13;

/** Usable stock at the end of a week or month. */
export interface StockAt {
	readonly date: string;
	readonly usable: number;
}

export interface Arrival {
	readonly date: string;
	/** Undefined for an order, of which the lot is not known yet. */
	readonly lot: string | undefined;
	readonly quantity: number;
}

/** How one item of the store stands in the weeks ahead. */
export interface StockOfItem {
	readonly line: OrderLine;
	/** At the end of each week. */
	readonly weeks: readonly StockAt[];
	readonly reserve: number;
	readonly arrivals: readonly Arrival[];
}

export function stockOfItem(state: State, item: string): StockOfItem | undefined {
	const rows = rowsOf(state.plan, stockAheadSheet).filter((row) => wordIn(row.item) === item);
	const line = orderLines(state).find((each) => each.item === item);
	const reserve = numberIn(rows[0]?.reserve);
	const weeks = rows.flatMap((row) => {
		const usable = numberIn(row.usable);
		return usable === undefined ? [] : [{ date: wordIn(row.date), usable }];
	});
	if (!line || reserve === undefined || weeks.length === 0) return undefined;
	return { line, weeks, reserve, arrivals: arrivalsOf(state, item) };
}

function arrivalsOf(state: State, item: string): Arrival[] {
	const firstDay = unitSetting(state, "plan_start") ?? "";
	const books = storeBooks(state.workbook);
	const lots = lotsOnHand(readWorkbook(state.workbook)).flatMap((lot) => {
		const date = arrivesOn(lot);
		return lot.row.value.item === item && date !== null && date > firstDay
			? [{ date, lot: lot.row.value.lot, quantity: lot.quantity }]
			: [];
	});
	const packSize = books.items.rows.find(({ value }) => value.item === item)?.value.pack_size ?? 1;
	const orders = ordersOnTheWay(books)
		.filter(({ row, expectedOn }) => row.value.item === item && expectedOn > firstDay)
		.map(({ row, expectedOn }) => ({
			date: expectedOn,
			lot: undefined,
			quantity: row.value.packs * packSize,
		}));
	return [...lots, ...orders];
}

export type Spacing = "weeks" | "months";

/** The stock to draw: the next weeks one by one, or the last week of each month as far as is looked ahead. */
export function stepped(weeks: readonly StockAt[], step: Spacing): StockAt[] {
	if (step === "weeks") return weeks.slice(0, WEEKS_SHOWN);
	const monthOf = (at: StockAt | undefined) => at?.date.slice(0, 7);
	return weeks.filter((at, i) => monthOf(at) !== monthOf(weeks[i + 1]));
}

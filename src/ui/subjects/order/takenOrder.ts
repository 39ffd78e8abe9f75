import { rowsOf } from "../../../core/plan/rowsOf.ts";
import { orderSheet } from "../../../core/sheets/order.ts";
import { isNeeded, type Stopped } from "../../../core/stock/stopsWithout.ts";
import { inOrder } from "../../../core/values/inOrder.ts";
import { waitsFor } from "../../format/waitsFor.ts";
import { numberIn, wordIn } from "../../state/numberIn.ts";
import type { State } from "../../state/store.ts";
import { unitSetting } from "../../state/unitSetting.ts";

/** What becomes of one item of the order with the money and the packs there are. */
export interface TakenLine {
	readonly item: string;
	readonly ordered: number;
	/** Undefined where it waits for something. */
	readonly taken: number | undefined;
	readonly cost: number | undefined;
	/** First day it is short from the delivery on; "" where it lasts as long as is looked ahead. */
	readonly outWithTaken: string;
	readonly outWithAll: string;
	readonly stops: Stopped;
	/** Why nothing tells what is taken; "" where it is known. */
	readonly waitsFor: string;
}

/** The order as it can be had. */
export interface TakenOrder {
	/** The items ordered, what no round can do without first, the first to run out first. */
	readonly lines: readonly TakenLine[];
	/** Undefined where the whole order can be paid for. */
	readonly money: number | undefined;
	/** Cost of the whole order, of what has a price. */
	readonly costOfAll: number;
	readonly spent: number;
	readonly withoutPrice: readonly string[];
	/** Whether less than the whole order can be had, or nothing tells. */
	readonly isLess: boolean;
}

/** What can be had of the order; undefined where nothing is ordered, or what is said of money and packs cannot be read. */
export function takenOrder(state: State): TakenOrder | undefined {
	const money = unitSetting(state, "order_money");
	const rows = rowsOf(state.plan, orderSheet).filter((row) => (numberIn(row.order_packs) ?? 0) > 0);
	if (money === undefined || rows.length === 0) return undefined;
	const lines = rows.map((row): TakenLine => {
		const { outcome } = row.take_packs;
		return {
			item: wordIn(row.item),
			ordered: numberIn(row.order_packs) ?? 0,
			taken: numberIn(row.take_packs),
			cost: numberIn(row.take_cost),
			outWithTaken: wordIn(row.take_run_out_on),
			outWithAll: wordIn(row.full_run_out_on),
			stops: (wordIn(row.stops) || "less") as Stopped,
			waitsFor: waitsFor(outcome),
		};
	});
	const sum = (amounts: readonly (number | undefined)[]) =>
		amounts.reduce<number>((all, each) => all + (each ?? 0), 0);
	return {
		lines: lines.sort(
			(a, b) =>
				inOrder(Number(!isNeeded(a.stops)), Number(!isNeeded(b.stops))) ||
				inOrder(lastDay(a), lastDay(b)) ||
				inOrder(a.item, b.item),
		),
		money: money ?? undefined,
		costOfAll: sum(rows.map((row) => numberIn(row.cost))),
		spent: sum(lines.map(({ cost }) => cost)),
		withoutPrice: rows
			.filter((row) => numberIn(row.cost) === undefined)
			.map((row) => wordIn(row.item)),
		isLess: lines.some(({ taken, ordered }) => taken === undefined || taken < ordered),
	};
}

/** What lasts comes after every day; what nothing is known of before. */
function lastDay({ outWithTaken, taken }: TakenLine): string {
	return taken === undefined ? "" : outWithTaken || "9999-12-31";
}

import { inOrder } from "../values/inOrder.ts";

/** What ends a lot. */
export type End = "out of date" | "too weak for the strength wanted";

/** A lot as the projection sees it. Days are counted from the first day, which is 0. */
export interface ProjectedLot {
	readonly name: string;
	readonly quantity: number;
	/** Day from which it is in the store; 0 or less where it is there. */
	readonly from: number;
	/** Last day on which it can be used; Infinity where no end is known. */
	readonly last: number;
	/** Why it ends, for the list of waste. */
	readonly ends: End;
	/** How much of it one unit of demand takes on a day. */
	readonly perUnit: (day: number) => number;
}

export interface Waste {
	readonly lot: string;
	/** First day on which it can no longer be used. */
	readonly day: number;
	readonly quantity: number;
	readonly why: End;
}

export interface Projection {
	/** Usable stock at the end of each day. */
	readonly stock: readonly number[];
	/** First day whose use is not covered; null where every day is. */
	readonly runOut: number | null;
	readonly waste: readonly Waste[];
}

/** A remainder this small is the rounding error of subtracting. */
const NOTHING = 1e-9;

/**
 * Use of an item day by day, first-expired-first-out: the lot that expires first leaves
 * first, of those that end on one day by their marks.
 *
 * A lot counts from the day it arrives and is waste after its last day.
 *
 * @param demand units used on each day
 */
export function project(lots: readonly ProjectedLot[], demand: readonly number[]): Projection {
	const store = new Shelf(lots);
	const stock: number[] = [];
	let runOut: number | null = null;
	demand.forEach((units, day) => {
		if (!store.covers(units, day)) runOut ??= day;
		stock.push(store.stockOn(day));
	});
	return { stock, runOut, waste: store.waste };
}

/** First day from a delivery on whose use is not covered, whatever came before it; null where every day is. */
export function shortFrom(
	delivery: number,
	lots: readonly ProjectedLot[],
	demand: readonly number[],
): number | null {
	const store = new Shelf(lots);
	const day = demand.findIndex((units, at) => !store.covers(units, at) && at >= delivery);
	return day < 0 ? null : day;
}

/** What is left of each lot, from one day to the next. */
class Shelf {
	readonly waste: Waste[] = [];
	readonly #left: { readonly lot: ProjectedLot; quantity: number }[];

	constructor(lots: readonly ProjectedLot[]) {
		this.#left = [...lots]
			.sort((a, b) => inOrder(a.last, b.last) || inOrder(a.name, b.name))
			.map((lot) => ({ lot, quantity: lot.quantity }));
	}

	/** Takes a day's use; false where it is more than there is. */
	covers(units: number, day: number): boolean {
		this.#clear(day);
		let need = units;
		for (const part of this.#left) {
			if (part.lot.from > day || need <= 0) continue;
			const perUnit = part.lot.perUnit(day);
			const taken = Math.min(part.quantity, need * perUnit);
			part.quantity -= taken;
			need -= taken / perUnit;
		}
		return need <= NOTHING * Math.max(1, units);
	}

	stockOn(day: number): number {
		return this.#left.reduce((sum, { lot, quantity }) => sum + (lot.from <= day ? quantity : 0), 0);
	}

	#clear(day: number): void {
		for (const part of this.#left) {
			if (part.lot.last >= day || part.quantity <= NOTHING) continue;
			this.waste.push({
				lot: part.lot.name,
				day,
				quantity: part.quantity,
				why: part.lot.ends,
			});
			part.quantity = 0;
		}
	}
}

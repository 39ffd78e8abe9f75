import { Grouped } from "../../grouped.ts";
import type { ReadWorkbook } from "../../read/readWorkbook.ts";
import type { UsageRow } from "../../sheets/usage.ts";
import type { IsoDate } from "../../values/date.ts";
import { nameInUse } from "../chlorine/nameInUse.ts";
import { dosesOfRounds } from "../store/drawsOfRounds.ts";
import { servedRounds } from "../store/servedRounds.ts";
import { daysOfBooks } from "./daysOfBooks.ts";
import { hasUnreadLine } from "./hasUnreadLine.ts";
import { itemsOverDays, usedOf } from "./itemsOverDays.ts";
import { roundsOverDays } from "./roundsOverDays.ts";
import { timesDone } from "./timesDone.ts";

/** What was gone of one item, beside what the plan takes for the work that was written down. */
export interface ItemAgainstPlan {
	readonly item: string;
	readonly measure: string;
	/** By the books; counts correct it. */
	readonly used: number;
	/** More than 0. */
	readonly planned: number;
	/** Between these the true use lies for all that one issue more or less, opened at the bench and not used up, can say. */
	readonly low: number;
	readonly high: number;
}

/**
 * Every item of which use is written down and the plan's use for the same work is known.
 * Not known is it without a round on the days, of what goes by the load or by something else
 * that nobody knows how often it was done, of an item with a line that cannot be read, of a
 * product of which a round names no lot, and of the product in use where the ward makes other
 * solution of it, because nobody writes down how often.
 */
export function itemsAgainstPlan(read: ReadWorkbook, all: readonly IsoDate[]): ItemAgainstPlan[] {
	const days = daysOfBooks(read, all);
	const plannedOf = plannedUse(read, days);
	return itemsOverDays(read, days).flatMap((item) => {
		const planned = item.isKept ? plannedOf(item.item) : undefined;
		if (!planned) return [];
		const used = usedOf(item);
		const { measure, largestIssue } = item;
		const [low, high] = [Math.max(0, used - largestIssue), used + largestIssue];
		return [{ item: item.item, measure, used, planned, low, high }];
	});
}

/** What the plan takes of an item; 0 or NaN where that is not known. */
function plannedUse(read: ReadWorkbook, days: readonly IsoDate[]): (item: string) => number {
	const { usage, chlorine, treatments, wardSolution } = read.tables;
	const rounds = roundsOverDays(read, days);
	const linesOf = new Grouped<string, UsageRow>();
	for (const { value } of usage.rows) linesOf.add(value.item, value);
	const products = new Set(chlorine.rows.map(({ value }) => value.product));
	const thrown = new Set(
		treatments.rows.flatMap(({ value }) => (value.method === "single_use" ? [value.piece] : [])),
	);
	const dosed = productDosed(read, days);
	const hasOtherUses = wardSolution.rows.length + wardSolution.badRows.length > 0;
	const inUse = nameInUse(read.tables);
	return (item) => {
		if (rounds.rounds === 0 || thrown.has(item) || hasUnreadLine(usage, item)) return 0;
		// As the plan takes it: by its dose, and by no line.
		if (item === inUse) return hasOtherUses ? 0 : dosed(item);
		let sum = 0;
		for (const { basis, quantity } of linesOf.of(item))
			sum += (timesDone(read, basis, rounds, days.length) ?? Number.NaN) * quantity;
		return products.has(item) ? sum + dosed(item) : sum;
	};
}

/** What the rounds of some days took of a product by their doses; NaN where that of one is not known. */
function productDosed(read: ReadWorkbook, days: readonly IsoDate[]): (item: string) => number {
	const all = new Set(days);
	const { roundsDone } = read.tables;
	const inUse = nameInUse(read.tables);
	const doseOf = new Map(
		dosesOfRounds(read).map(({ line, entry }) => [line, entry.quantity] as const),
	);
	const served = servedRounds(read);
	return (item) => {
		let sum = 0;
		for (const { line, value } of roundsDone.rows) {
			if (!all.has(value.date) || (value.product || inUse) !== item || served.has(line)) continue;
			sum += doseOf.get(line) ?? Number.NaN;
		}
		return sum;
	};
}

import type { Strength } from "../chlorine/availableChlorine.ts";
import { asLabelled } from "../chlorine/shownStrength.ts";

/** A product's packs as the store buys them. */
export interface Pack {
	/** Product in a pack, in mL, g or tablets. */
	readonly size: number;
	/** Price of a pack; null where it is not known. */
	readonly price: number | null;
}

/** Ordering a product fresh every so many days. */
export interface Interval {
	readonly days: number;
	/** Product used in one interval, in mL, g or tablets, as it fades. */
	readonly quantity: number;
	readonly packs: number;
	readonly cost: number | null;
	/** Available chlorine that faded before use, in grams. */
	readonly lostGrams: number;
}

/**
 * Product for a steady use of chlorine over one interval, ordered fresh at its start.
 *
 * Each day takes what that day's strength asks for: grams a day ÷ strength.
 *
 * @param gramsPerDay available chlorine that the solution takes a day
 * @param strengthAfter strength of the product after some days in the store
 */
export function orderInterval(
	days: number,
	gramsPerDay: number,
	strengthAfter: (days: number) => Strength,
	pack: Pack,
): Interval {
	const fresh = gramsPerUnit(strengthAfter(0));
	let quantity = 0;
	let lostGrams = 0;
	for (let day = 0; day < days; day++) {
		const left = gramsPerUnit(strengthAfter(day));
		const used = gramsPerDay / left;
		quantity += used;
		// Of what was bought less what was used, two large sums, only their rounding would be left.
		lostGrams += used * (fresh - left);
	}
	const packs = Math.ceil(quantity / pack.size - 1e-9);
	return {
		days,
		quantity,
		packs,
		cost: pack.price === null ? null : packs * pack.price,
		lostGrams,
	};
}

/** Grams of available chlorine in a mL, a g or a tablet. */
function gramsPerUnit(strength: Strength): number {
	return strength.form === "liquid" || strength.form === "powder"
		? asLabelled(strength) / 100
		: strength.gramsPerTablet;
}

/** The interval that costs least a day; by packs where no price is known; the longest of those that tie. */
export function cheapest(intervals: readonly Interval[]): Interval {
	const perDay = ({ cost, packs, days }: Interval) => (cost ?? packs) / days;
	return [...intervals].sort((a, b) => perDay(a) - perDay(b) || b.days - a.days)[0] as Interval;
}

import type { Counts } from "./counts.ts";

/**
 * How likely each amount is when every number stands for one amount.
 *
 * An amount between two whole ones is shared between them so that its mean stays: what
 * comes out is never less spread, and rounding does not add up over many of them.
 *
 * @param limit amounts beyond it are left out: the chances of all others stay as they are
 * @example a sure amount of 2.25 is 2 in three of four cases, else 3
 */
export function spread(
	{ first, chance }: Counts,
	amountOf: (count: number) => number,
	limit = Number.POSITIVE_INFINITY,
): Counts {
	const amounts = new Float64Array(chance.length);
	let [least, most] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
	for (let i = 0; i < chance.length; i++) {
		const amount = amountOf(first + i);
		amounts[i] = amount;
		if (amount > limit) continue;
		if (amount < least) least = amount;
		if (amount > most) most = amount;
	}
	if (least > most) return { first: limit, chance: new Float64Array(1) };
	least = Math.floor(least);
	const all = new Float64Array(Math.ceil(most) - least + 1);
	for (let i = 0; i < chance.length; i++) {
		const amount = amounts[i] as number;
		if (amount > limit) continue;
		const at = Math.floor(amount);
		const above = amount - at;
		const p = chance[i] as number;
		all[at - least] = (all[at - least] as number) + p * (1 - above);
		if (above > 0) all[at - least + 1] = (all[at - least + 1] as number) + p * above;
	}
	return { first: least, chance: all };
}

/** The count with a known amount added, whole or shared between two whole ones. */
export function moved({ first, chance }: Counts, by: number): Counts {
	const whole = Math.floor(by);
	const above = by - whole;
	if (above === 0) return { first: first + by, chance };
	const shared = new Float64Array(chance.length + 1);
	for (let i = 0; i < chance.length; i++) {
		const p = chance[i] as number;
		shared[i] = (shared[i] as number) + p * (1 - above);
		shared[i + 1] = p * above;
	}
	return { first: first + whole, chance: shared };
}

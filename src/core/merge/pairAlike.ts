import { ALIKE } from "./alikeness.ts";
import { ALONE, type Pairs, pair } from "./pairs.ts";

/** So many rows are compared with so many: as many as a whole store that was counted in one visit. */
const MOST = 100;

/**
 * Pairs those of some rows that are most alike, each with one; rows that have little in common
 * stay alone. Of very many it goes through one part after the other, so that lines in the same
 * order find each other, however many there are.
 */
export function pairAlike(
	pairs: Pairs,
	ones: readonly number[],
	others: readonly number[],
	alike: (one: number, other: number) => number,
): void {
	for (let from = 0; from < ones.length; from += MOST) {
		const left = others.filter((other) => pairs.ofOther[other] === ALONE);
		pairNear(pairs, ones.slice(from, from + MOST), left.slice(0, MOST), alike);
	}
}

function pairNear(
	pairs: Pairs,
	ones: readonly number[],
	others: readonly number[],
	alike: (one: number, other: number) => number,
): void {
	const found = ones
		.flatMap((one) => others.map((other) => ({ one, other, share: alike(one, other) })))
		.filter(({ share }) => share >= ALIKE)
		.sort((a, b) => b.share - a.share);
	for (const { one, other } of found)
		if (pairs.ofOne[one] === ALONE && pairs.ofOther[other] === ALONE) pair(pairs, one, other);
}

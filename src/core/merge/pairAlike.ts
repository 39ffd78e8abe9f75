import { ALIKE } from "./alikeness.ts";
import { ALONE, type Pairs, pair } from "./pairs.ts";

/** So many rows are compared with so many; more than that are no longer one place. */
const MOST = 20;

/** Pairs those of some rows that are most alike, each with one; rows that have little in common stay alone. */
export function pairAlike(
	pairs: Pairs,
	ones: readonly number[],
	others: readonly number[],
	alike: (one: number, other: number) => number,
): void {
	const found = ones
		.slice(0, MOST)
		.flatMap((one) =>
			others.slice(0, MOST).map((other) => ({ one, other, share: alike(one, other) })),
		)
		.filter(({ share }) => share >= ALIKE)
		.sort((a, b) => b.share - a.share);
	for (const { one, other } of found)
		if (pairs.ofOne[one] === ALONE && pairs.ofOther[other] === ALONE) pair(pairs, one, other);
}

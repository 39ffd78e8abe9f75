import { MOST_OBJECTS, memoize } from "../memoize.ts";
import type { RenewalStep } from "./renewalSteps.ts";
import { placeOf, statesOf } from "./waysToEnd.ts";

/** Where the ways for kits to end that were not used lead (`statesOf`). */
export interface Moves {
	/** Once those used are ready again: a way for all kits. */
	readonly next: Uint16Array;
	/** Kits that join unused. */
	readonly renewed: Uint8Array;
	/** With one use more, of the oldest: a way for one kit fewer. */
	readonly less: Uint16Array;
}

/** Where a step leads, by the number of kits used in it. */
export const movesOf = memoize(
	(
		kits: number,
		ends: number,
		endsBy: number,
		spreadBy: number,
		target: number,
		midnight: RenewalStep["midnight"],
		rounds: number,
	): Moves[] =>
		Array.from({ length: kits + 1 }, (_, used) => {
			const states = statesOf(kits - used, ends);
			const next = new Uint16Array(states.length);
			const renewed = new Uint8Array(states.length);
			const left = new Uint8Array(ends);
			states.forEach((counts, state) => {
				left.set(counts);
				if (midnight === "before") dayLater(left);
				let joining = endingBy(left, endsBy);
				for (let i = 0; i < rounds; i++) joining += spread(left, spreadBy);
				if (midnight === "after") dayLater(left);
				left[target] = (left[target] as number) + used + joining;
				next[state] = placeOf(left, kits);
				renewed[state] = joining;
			});
			return { next, renewed, less: lessOne(kits - used, ends) };
		}),
	undefined,
	MOST_OBJECTS,
);

/** Where one use leads each way for some kits to end. */
const lessOne = memoize((kits: number, ends: number): Uint16Array => {
	if (kits === 0) return new Uint16Array(1);
	const left = new Uint8Array(ends);
	return Uint16Array.from(statesOf(kits, ends), (counts) => {
		left.set(counts);
		const oldest = left.findIndex((count) => count > 0);
		left[oldest] = (left[oldest] as number) - 1;
		return placeOf(left, kits - 1);
	});
});

/** What ended before today is counted to today. */
function dayLater(counts: Uint8Array): void {
	const over = counts[0] as number;
	counts.copyWithin(0, 1);
	counts[counts.length - 1] = 0;
	counts[0] = (counts[0] as number) + over;
}

/** Takes out what ends by a day, and says how many. */
function endingBy(counts: Uint8Array, endsBy: number): number {
	let joining = 0;
	for (let end = 0; end <= endsBy; end++) {
		joining += counts[end] as number;
		counts[end] = 0;
	}
	return joining;
}

/** Takes out one of the oldest if several end together by a day. */
function spread(counts: Uint8Array, spreadBy: number): number {
	const oldest = counts.findIndex((count) => count > 0);
	const together = counts[oldest] ?? 0;
	if (together < 2 || oldest > spreadBy) return 0;
	counts[oldest] = together - 1;
	return 1;
}

import { memoize } from "../memoize.ts";

/** How many ways there are for `kits` kits to end on `ends` days. */
export function waysToEnd(kits: number, ends: number): number {
	let ways = 1;
	for (let i = 1; i <= kits; i++) ways = (ways * (ends - 1 + i)) / i;
	return ways;
}

/** All of them, one after the other: for each, how many kits end on each day. */
export const statesOf = memoize((kits: number, ends: number): readonly Uint8Array[] => {
	const states: Uint8Array[] = [];
	const counts = new Uint8Array(ends);
	const fill = (end: number, left: number) => {
		if (end === ends - 1) {
			counts[end] = left;
			states.push(counts.slice());
			return;
		}
		for (let n = 0; n <= left; n++) {
			counts[end] = n;
			fill(end + 1, left - n);
		}
	};
	fill(0, kits);
	return states;
});

/** Which of them the counts are: before it come those with fewer kits on the first day in which they differ. */
export function placeOf(counts: Uint8Array, kits: number): number {
	const ends = counts.length;
	const ways = waysUpTo(kits, ends);
	let place = 0;
	let left = kits;
	for (let end = 0; end < ends - 1; end++) {
		const ofRest = ways[ends - end] as Float64Array;
		const others = left - (counts[end] as number);
		place += (ofRest[left] as number) - (ofRest[others] as number);
		left = others;
	}
	return place;
}

/** By the days, and by the kits. */
const waysUpTo = memoize((kits: number, ends: number) =>
	Array.from({ length: ends + 1 }, (_, days) =>
		Float64Array.from({ length: kits + 1 }, (_, count) => waysToEnd(count, days)),
	),
);

import { ALONE, type Pairs } from "./pairs.ts";

/** A row of the merged sheet: its place in either copy, ALONE where it is not in that one. */
export interface MergedPlace {
	readonly ours: number;
	readonly theirs: number;
}

/**
 * The rows of two copies in one order that keeps the order of both. Where both put rows in
 * at the same place they come by their texts, which begin with the day in every log, so
 * that the order does not depend on whose copy is called ours.
 */
export function mergedPlaces(
	{ ofOne, ofOther }: Pairs,
	ourText: (row: number) => string,
	theirText: (row: number) => string,
): MergedPlace[] {
	const merged: MergedPlace[] = [];
	const taken = new Uint8Array(ofOther.length);
	let [ours, theirs] = [0, 0];
	for (;;) {
		while (taken[theirs]) theirs++;
		const isOurs = ofOne[ours] === ALONE;
		const isTheirs = ofOther[theirs] === ALONE;
		if (isOurs && (!isTheirs || ourText(ours) <= theirText(theirs)))
			merged.push({ ours: ours++, theirs: ALONE });
		else if (isTheirs) merged.push({ ours: ALONE, theirs: theirs++ });
		else if (ours < ofOne.length) {
			const partner = ofOne[ours] as number;
			taken[partner] = 1;
			merged.push({ ours: ours++, theirs: partner });
		} else return merged;
	}
}

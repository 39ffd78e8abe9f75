/** How the strength of a product can be measured on the ward. */
export const readingMethods = ["strip", "titration", "colour_comparison"] as const;
export type ReadingMethod = (typeof readingMethods)[number];

/** How far readings by each method were off, the least and the most, as a share (Wells et al. 2016; sources.readingErrors). */
export const READING_ERROR: Readonly<
	Record<ReadingMethod, { readonly least: number; readonly most: number }>
> = {
	strip: { least: 0.052, most: 0.48 },
	titration: { least: 0, most: 0.124 },
	colour_comparison: { least: 0.024, most: 0.19 },
};

/** An error in percent, for reading: to the decimal that its source has, so that none is shown smaller than it is. @example 0.124 → 12.4 */
export function errorPct(share: number): number {
	return Math.round(1000 * share) / 10;
}

/**
 * The strengths that a reading still agrees with: a computed strength outside them
 * differs by more than the method's error. Same unit as the reading.
 *
 * @example readingRange(4, "titration") // { low: 3.559, high: 4.566 }
 */
export function readingRange(
	strength: number,
	method: ReadingMethod,
): { readonly low: number; readonly high: number } {
	const error = READING_ERROR[method].most;
	return { low: strength / (1 + error), high: strength / (1 - error) };
}

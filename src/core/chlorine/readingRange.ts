/** How the strength of a product can be measured on the ward. */
export const readingMethods = ["strip", "titration", "colour_comparison"] as const;
export type ReadingMethod = (typeof readingMethods)[number];

/** How far a reading by each method may be off, as a share (Wells et al. 2016; sources.readingErrors). */
export const READING_ERROR: Readonly<Record<ReadingMethod, number>> = {
	strip: 0.48,
	titration: 0.124,
	colour_comparison: 0.19,
};

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
	const error = READING_ERROR[method];
	return { low: strength / (1 + error), high: strength / (1 - error) };
}

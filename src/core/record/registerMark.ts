/** In small letters, as long as the text: İ alone would become two characters. */
export function inSmallLetters(text: string): string {
	return text.replaceAll("İ", "i").toLowerCase();
}

/**
 * The mark of the register that is meant by one written elsewhere, small letters or capitals;
 * as it is written where none is meant.
 *
 * @param known marks of the register
 * @example k1 with K1, K2 → K1
 */
export function registerMark(known: readonly string[]): (written: string) => string {
	const exactly = new Set(known);
	const bySmall = new Map(known.map((mark) => [inSmallLetters(mark), mark]));
	return (written) =>
		exactly.has(written) ? written : (bySmall.get(inSmallLetters(written)) ?? written);
}

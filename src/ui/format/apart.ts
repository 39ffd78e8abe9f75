/**
 * Heights for words that belong to heights of a picture, moved as little as keeps them apart.
 *
 * @param wanted from the highest down, or as high
 * @param gap between two, at least
 * @param least under which none may be
 */
export function apart(wanted: readonly number[], gap: number, least: number): number[] {
	let above = Number.POSITIVE_INFINITY;
	const below = wanted.map((height) => {
		above = Math.min(height, above - gap);
		return above;
	});
	return below.map((height, i) => Math.max(height, least + (wanted.length - 1 - i) * gap));
}

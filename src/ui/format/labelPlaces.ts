/** Where the words of a label stand: to the right of its place or to the left, and on which line, 0 the lowest. */
export interface LabelPlace {
	readonly isLeft: boolean;
	readonly line: number;
}

/**
 * Places for labels over a picture, each above those before it that its words would touch.
 *
 * @param labels where each points and how wide it is, in px
 * @param most how far to the right they may reach, in px
 */
export function labelPlaces(
	labels: readonly { readonly at: number; readonly wide: number }[],
	most: number,
): LabelPlace[] {
	const places: (LabelPlace & { readonly from: number; readonly to: number })[] = [];
	for (const { at, wide } of labels) {
		const isLeft = at + wide > most;
		const [from, to] = isLeft ? [at - wide, at] : [at, at + wide];
		const below = places.filter((place) => place.from < to && from < place.to);
		places.push({ isLeft, from, to, line: 1 + Math.max(-1, ...below.map(({ line }) => line)) });
	}
	return places.map(({ isLeft, line }) => ({ isLeft, line }));
}

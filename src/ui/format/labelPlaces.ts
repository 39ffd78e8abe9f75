/** Where the words of a label stand: to the right of its place or to the left, and on which line, 0 the lowest. */
export interface LabelPlace {
	readonly isLeft: boolean;
	readonly line: number;
}

/**
 * Places for labels over a picture, each on the lowest line where its words touch none before it.
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
		const touched = places.filter((place) => place.from < to && from < place.to);
		let line = 0;
		while (touched.some((place) => place.line === line)) line++;
		places.push({ isLeft, from, to, line });
	}
	return places.map(({ isLeft, line }) => ({ isLeft, line }));
}

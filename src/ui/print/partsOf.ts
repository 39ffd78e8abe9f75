/** A list in parts of at most so many, in its order: what stands together on paper. */
export function partsOf<T>(list: readonly T[], most: number): (readonly T[])[] {
	const starts = list.flatMap((_, at) => (at % most === 0 ? [at] : []));
	return starts.map((start) => list.slice(start, start + most));
}

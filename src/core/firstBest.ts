interface Tried<R> {
	readonly row: R;
	readonly value: number;
}

/**
 * Of things that are costly to try the one with the highest value; of several with the same
 * the first. Those that may be highest are tried first, and what can no longer win is not.
 *
 * @param most never less than the value that trying finds
 * @param tried undefined for what is no answer
 * @param closer not less than that value either, asked only of what may still win
 */
export function firstBest<T, R>(
	things: readonly T[],
	most: (thing: T) => number,
	tried: (thing: T) => Tried<R> | undefined,
	closer?: (thing: T) => number,
): Tried<R> | undefined {
	const inOrder = things
		.map((thing, at) => ({ thing, at, most: most(thing) }))
		.sort((a, b) => b.most - a.most);
	let best: (Tried<R> & { readonly at: number }) | undefined;
	for (const { thing, at, most } of inOrder) {
		if (best && most < best.value) break;
		if (best && most === best.value && at > best.at) continue;
		if (best && closer && closer(thing) < best.value) continue;
		const found = tried(thing);
		if (!found) continue;
		if (!best || found.value > best.value || (found.value === best.value && at < best.at))
			best = { ...found, at };
	}
	return best;
}

/** Results kept at most; then all are let go and worked out again as they are asked for. */
export const MOST_RESULTS = 4096;

/**
 * A function that does not work out again what it worked out lately.
 *
 * Only for pure functions whose results nobody changes: the days of a plan are
 * mostly alike, and an edit leaves most of them as they were.
 */
export function remembered<A extends readonly unknown[], V>(
	keyOf: (...inputs: A) => string | number,
	work: (...inputs: A) => V,
): (...inputs: A) => V {
	const results = new Map<string | number, V>();
	return (...inputs) => {
		const key = keyOf(...inputs);
		const known = results.get(key);
		if (known !== undefined) return known;
		if (results.size >= MOST_RESULTS) results.clear();
		const result = work(...inputs);
		results.set(key, result);
		return result;
	};
}

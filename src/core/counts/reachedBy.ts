/**
 * The quantile of amounts in any order: the smallest that is enough with at least a chance; the largest where
 * the chances do not add up to it.
 *
 * @param chance of each amount, at the same place
 * @param level above 0, at most 1
 * @example of 7, 2 and 5, each with a chance of a third, 5 is enough in half of all cases
 */
export function reachedBy(amounts: Float64Array, chance: Float64Array, level: number): number {
	const order = Uint32Array.from(amounts, (_, i) => i);
	order.sort((one, other) => (amounts[one] as number) - (amounts[other] as number));
	let sum = 0;
	const reached = order.find((i) => {
		sum += chance[i] as number;
		return sum >= level;
	});
	return amounts[reached ?? (order.at(-1) as number)] as number;
}

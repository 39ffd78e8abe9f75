/**
 * All of them added up, the smallest first: the same to the last digit in whatever order they
 * are given, and what is small is not lost beside what is large.
 *
 * @example sumOfAll([3, 0, 2.5]) // 5.5
 */
export function sumOfAll(amounts: readonly number[]): number {
	// Two are the same either way, and most sums are of one or two kinds of kit.
	if (amounts.length <= 2) return (amounts[0] ?? 0) + (amounts[1] ?? 0);
	return [...amounts].sort((one, other) => one - other).reduce((sum, amount) => sum + amount, 0);
}

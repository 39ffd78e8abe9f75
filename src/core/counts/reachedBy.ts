/** Amounts are told apart in so many parts first: only those of one part are put in order. */
const PARTS = 256;

/**
 * The quantile of amounts in any order: the smallest that is enough with at least a chance; the largest where
 * the chances do not add up to it.
 *
 * @param chance of each amount, at the same place
 * @param level above 0, at most 1
 * @example of 7, 2 and 5, each with a chance of a third, 5 is enough in half of all cases
 */
export function reachedBy(amounts: Float64Array, chance: Float64Array, level: number): number {
	let [least, most] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
	for (const amount of amounts) {
		if (amount < least) least = amount;
		if (amount > most) most = amount;
	}
	const perPart = PARTS / (most - least);
	if (!Number.isFinite(perPart)) return least;
	const partOf = (amount: number) => Math.min(PARTS - 1, Math.floor((amount - least) * perPart));
	const parts = new Float64Array(PARTS);
	for (let i = 0; i < amounts.length; i++) {
		const part = partOf(amounts[i] as number);
		parts[part] = (parts[part] as number) + (chance[i] as number);
	}
	let [sum, part] = [0, 0];
	while (part < PARTS - 1 && sum + (parts[part] as number) < level) sum += parts[part++] as number;
	const within: number[] = [];
	for (let i = 0; i < amounts.length; i++)
		if (partOf(amounts[i] as number) === part) within.push(i);
	within.sort((one, other) => (amounts[one] as number) - (amounts[other] as number));
	for (const i of within) {
		sum += chance[i] as number;
		if (sum >= level) return amounts[i] as number;
	}
	return amounts[within.at(-1) as number] as number;
}

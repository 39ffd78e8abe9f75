/**
 * All of them added up, the smallest first: the same to the last digit in whatever order they
 * are given, and what is small is not lost beside what is large.
 *
 * @example sumOfAll([3, 0, 2.5]) // 5.5
 */
export function sumOfAll(amounts: readonly number[]): number {
	// Two are the same either way, and most sums are of one or two kinds of kit.
	if (amounts.length <= 2) return (amounts[0] ?? 0) + (amounts[1] ?? 0);
	const sorted =
		amounts.length <= room.length ? sortedInRoom(amounts) : Float64Array.from(amounts).sort();
	let sum = sorted[0] as number;
	for (let i = 1; i < amounts.length; i++) sum += sorted[i] as number;
	return sum;
}

/** Where few amounts are sorted: a new list for each sum would be much to tidy up. */
const room = new Float64Array(32);

function sortedInRoom(amounts: readonly number[]): Float64Array {
	for (let i = 0; i < amounts.length; i++) {
		const amount = amounts[i] as number;
		let at = i;
		for (; at > 0 && (room[at - 1] as number) > amount; at--) room[at] = room[at - 1] as number;
		room[at] = amount;
	}
	return room;
}

/**
 * Erlang's loss formula, written apart from the program as a bound for it: the share
 * of needs that find none of `kits` ready when such a need takes no kit.
 *
 * @param load mean number in reprocessing, were there kits without end
 */
export function erlangB(load: number, kits: number): number {
	if (load === 0) return kits === 0 ? 1 : 0;
	let inverse = 1;
	for (let k = 1; k <= kits; k++) inverse = 1 + (k / load) * inverse;
	return 1 / inverse;
}

/** The load at which `kits` kits have the given share of needs unmet. */
export function loadWithLoss(loss: number, kits: number): number {
	let low = 0;
	let high = 1000;
	for (let i = 0; i < 200; i++) {
		const middle = (low + high) / 2;
		if (erlangB(middle, kits) < loss) low = middle;
		else high = middle;
	}
	return low;
}

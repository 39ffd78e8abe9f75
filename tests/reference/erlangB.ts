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

/** Less than this is seen nowhere. */
const UNSEEN = 1e-25;

/**
 * How likely each number of one kind is among kits that wait together: each is of that kind
 * by the same chance, whatever the others are, as those are that come one by one (thinning).
 * One kit after the other is told apart, so that nothing is ever subtracted.
 *
 * @param kits how likely 0, 1, … of all kinds are; also weights that do not add up to 1
 * @param share of the kind, 0 to 1
 * @example ofOneKind(Float64Array.of(0, 0, 1), 0.5) // 0.25, 0.5, 0.25
 */
export function ofOneKind(kits: Float64Array, share: number): Float64Array {
	if (share === 1) return kits;
	const other = 1 - share;
	const ofKind = new Float64Array(kits.length);
	let end = 0;
	for (let n = kits.length - 1; n >= 0; n--) {
		if (end > 0) ofKind[end] = share * (ofKind[end - 1] as number);
		for (let k = end - 1; k > 0; k--)
			ofKind[k] = other * (ofKind[k] as number) + share * (ofKind[k - 1] as number);
		ofKind[0] = (end > 0 ? other * (ofKind[0] as number) : 0) + (kits[n] as number);
		end++;
		while (end > 1 && (ofKind[end - 1] as number) < UNSEEN) ofKind[--end] = 0;
	}
	return ofKind.subarray(0, end);
}

/** A smaller input of which the same is true: pieces are taken away, large ones first, as long as it stays so. */
export async function smallest(
	input: Uint8Array,
	isTrue: (input: Uint8Array) => Promise<boolean>,
	tries = 2000,
): Promise<Uint8Array> {
	let result = input;
	let left = tries;
	for (let size = Math.ceil(result.length / 2); size >= 1; size = Math.floor(size / 2))
		for (let at = 0; at < result.length && left > 0; left--) {
			const shorter = new Uint8Array(
				Buffer.concat([result.subarray(0, at), result.subarray(at + size)]),
			);
			if (await isTrue(shorter)) result = shorter;
			else at += size;
		}
	return result;
}

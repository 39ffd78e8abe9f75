/** Works off what is done in pieces, with a breath between any two. */
export async function inPieces<V>(
	work: Generator<void, V>,
	breath: () => Promise<void>,
): Promise<V> {
	let piece = work.next();
	for (; !piece.done; piece = work.next()) await breath();
	return piece.value;
}

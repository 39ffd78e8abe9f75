import { nextTurn } from "./nextTurn.ts";

const SLICE_MS = 40;

/** Lets the page paint and answer between slices of long work: `await` it as often as you like, it pauses only when a slice is full. */
export function breath(sliceMs = SLICE_MS): () => Promise<void> {
	let began = performance.now();
	return async () => {
		if (performance.now() - began < sliceMs) return;
		await nextTurn();
		began = performance.now();
	};
}

import { afterPaint } from "./afterPaint.ts";

/** So long pieces are done one after the other before a key or a click gets its turn. */
const SLICE_MS = 8;

/** @returns true where it has more to do, which comes before what waits behind it */
type Piece = () => unknown;

/** What waits, by the element that it draws into. */
const waiting = new Map<Element, Piece>();
let state: "resting" | "painting" | "working" = "resting";
let next: ReturnType<typeof setTimeout> | undefined;

/**
 * Draws what a person does not wait for once the browser has painted the rest: piece by
 * piece, and a key pressed between two of them is answered first.
 *
 * A piece asked for again before it was done is done once, as it was asked for last; one
 * whose element has gone is not done.
 */
export function soon(element: Element, piece: Piece): void {
	waiting.delete(element);
	waiting.set(element, piece);
	sayDrawing();
	if (state !== "resting") return;
	state = "painting";
	clearTimeout(next);
	afterPaint(goOn);
}

/** Does at once what waits: a page that is printed, or left, is whole. */
export function hurry(): void {
	work(Number.POSITIVE_INFINITY);
}

function goOn(): void {
	try {
		work(performance.now() + SLICE_MS);
	} finally {
		// A piece that fails takes no other with it.
		if (waiting.size > 0) next = setTimeout(goOn);
	}
}

function work(until: number): void {
	state = "working";
	try {
		// A piece that asks for another has it done in its turn.
		for (const [element, piece] of waiting) {
			while (isGoingOn(element, piece)) if (performance.now() > until) return;
			if (performance.now() > until) return;
		}
	} finally {
		state = "resting";
		sayDrawing();
	}
}

/** Does some of a piece; one that is done, or failed, or was asked for anew, goes on no longer. */
function isGoingOn(element: Element, piece: Piece): boolean {
	let more = false;
	try {
		more = element.isConnected && piece() === true;
	} finally {
		if (!more && waiting.get(element) === piece) waiting.delete(element);
	}
	return more && waiting.get(element) === piece;
}

/** Whoever needs the page whole sees that it is not yet. */
function sayDrawing(): void {
	document.body.toggleAttribute("data-drawing", waiting.size > 0);
}

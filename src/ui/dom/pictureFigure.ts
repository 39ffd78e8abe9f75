import type * as Pictures from "../pictures.ts";
import { drawing } from "./drawing.ts";
import { type Child, el } from "./el.ts";

const WIDEST_PX = 760;
const NARROWEST_PX = 280;

/** How wide a picture may be in the room there is, in px. */
export function pictureWidth(room: number): number {
	return Math.min(WIDEST_PX, Math.max(NARROWEST_PX, room));
}

/** How a picture is drawn, and its name for who cannot see it. */
export interface Drawn {
	readonly name: string;
	readonly draw: (pictures: typeof Pictures) => SVGElement;
}

/** A picture with the sentences that say what it shows. */
export function pictureFigure(draw: Drawn["draw"], name: string, ...words: Child[]): HTMLElement {
	return picturesFigure([{ name, draw }], ...words);
}

/** Pictures one below the other, which paper may part, with the sentences that say what all of them show. */
export function picturesFigure(drawn: readonly Drawn[], ...words: Child[]): HTMLElement {
	return el(
		"figure",
		{ class: drawn.length === 1 ? "picture" : "picture in-parts" },
		...drawn.map(({ name, draw }) => drawing(name, draw)),
		el("figcaption", {}, ...words),
	);
}

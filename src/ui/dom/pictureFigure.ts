import type * as Pictures from "../pictures.ts";
import { drawing } from "./drawing.ts";
import { type Child, el } from "./el.ts";

const WIDEST_PX = 760;
const NARROWEST_PX = 280;

/** How wide a picture may be in the room there is, in px. */
export function pictureWidth(room: number): number {
	return Math.min(WIDEST_PX, Math.max(NARROWEST_PX, room));
}

/** A picture with its name for who cannot see it, and the sentences that say what it shows. */
export function pictureFigure(
	draw: (pictures: typeof Pictures) => SVGElement,
	name: string,
	...words: Child[]
): HTMLElement {
	return el("figure", { class: "picture" }, drawing(name, draw), el("figcaption", {}, ...words));
}

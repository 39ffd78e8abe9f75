import { type Child, el } from "./el.ts";

const WIDEST_PX = 760;
const NARROWEST_PX = 280;

/** How wide a picture may be in the room there is, in px. */
export function pictureWidth(room: number): number {
	return Math.min(WIDEST_PX, Math.max(NARROWEST_PX, room));
}

/** A picture with its name for who cannot see it, and the sentences that say what it shows. */
export function pictureFigure(picture: SVGElement, name: string, ...words: Child[]): HTMLElement {
	picture.setAttribute("role", "img");
	picture.setAttribute("aria-label", name);
	return el("figure", { class: "picture" }, picture, el("figcaption", {}, ...words));
}

import { type Child, el } from "../dom/el.ts";

/** From this width on there is room for everything at once. */
const ROOMY = "(min-width: 62.01rem) and (min-height: 30rem)";

/** A part of a page that folds behind its name where the screen is small, and stands open elsewhere. */
export function fold(name: string, words: string, ...children: readonly Child[]): HTMLElement {
	const open = matchMedia(ROOMY).matches;
	return el("details", { class: `fold ${name}`, open }, el("summary", {}, words), ...children);
}

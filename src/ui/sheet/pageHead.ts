import { type Child, el } from "../dom/el.ts";

/** The head of a page of its own: what it says first, and what it is for. */
export function pageHead(title: HTMLElement, about: Child): HTMLElement {
	const said = about instanceof HTMLElement ? about : el("p", {}, about);
	return el("header", { class: "sheet-head" }, title, el("div", { class: "about" }, said));
}

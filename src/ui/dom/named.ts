import { el } from "./el.ts";

/** A field with its name before it, which go to the next line together. @param field with an id of its own */
export function named(name: string, field: HTMLElement): HTMLElement {
	return el("span", { class: "named" }, el("label", { for: field.id }, name), field);
}

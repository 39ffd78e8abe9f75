import { wordsOf } from "./wordsOf.ts";

type Listener = (event: Event) => void;
type Prop = string | number | boolean | undefined | Listener;
export type Child = Node | string | undefined | false;

/**
 * A new element. Texts become text nodes, never markup, so nothing typed into a
 * cell can act on the page. `on…` props are listeners; true is an attribute without a value.
 */
export function el<K extends keyof HTMLElementTagNameMap>(
	tag: K,
	props: Readonly<Record<string, Prop>> = {},
	...children: readonly Child[]
): HTMLElementTagNameMap[K] {
	const element = document.createElement(tag);
	for (const [name, value] of Object.entries(props)) {
		if (value === undefined || value === false) continue;
		if (typeof value === "function") element.addEventListener(name.slice(2), value);
		else element.setAttribute(name, value === true ? "" : String(value));
	}
	element.append(...present(element, children));
	return element;
}

/** Replaces everything in an element. */
export function fill(element: Element, ...children: readonly Child[]): void {
	element.replaceChildren(...present(element, children));
}

/** What stands in an element of these children: its nodes and texts. */
export function present(inside: Element, children: readonly Child[]): (Node | string)[] {
	return children
		.filter((child): child is Node | string => child !== undefined && child !== false)
		.flatMap((child) => (typeof child === "string" ? wordsOf(child, inside) : child));
}

/** The element of the page's own markup with this id; the page always has it. */
export function byId(id: string): HTMLElement {
	const found = document.getElementById(id);
	if (!found) throw new Error(`program error: the page has no #${id}`);
	return found;
}

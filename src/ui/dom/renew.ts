import { type Child, present } from "./el.ts";

/** Replaces of an element's content only what is no longer as it was: the browser lays out and paints nothing else, and what has the focus keeps it. */
export function renew(element: Element, ...children: readonly Child[]): void {
	const before = [...element.childNodes];
	const after = present(element, children).map((child) =>
		typeof child === "string" ? document.createTextNode(child) : child,
	);
	after.forEach((child, at) => {
		const old = before[at];
		if (!old) element.append(child);
		else if (!old.isEqualNode(child)) element.replaceChild(child, old);
	});
	for (const old of before.slice(after.length)) old.remove();
}

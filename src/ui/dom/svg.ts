const SVG = "http://www.w3.org/2000/svg";

/** A new element of a picture; texts become text nodes. */
export function svg(
	tag: string,
	attributes: Readonly<Record<string, string | number>> = {},
	...children: readonly (SVGElement | string)[]
): SVGElement {
	const element = document.createElementNS(SVG, tag);
	for (const [name, value] of Object.entries(attributes)) element.setAttribute(name, String(value));
	element.append(...children);
	return element;
}

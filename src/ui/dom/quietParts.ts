/** The picture speaks as a whole; names on its inner parts would only be noise. */
export function quietParts(picture: SVGElement): SVGElement {
	for (const part of picture.querySelectorAll("[aria-label]")) part.removeAttribute("aria-label");
	return picture;
}

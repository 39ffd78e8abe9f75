import { say } from "../../core/say.ts";
import type * as Pictures from "../pictures.ts";
import { el, fill } from "./el.ts";
import { later } from "./later.ts";

const pictures = later(() => import("../pictures.ts"));

/**
 * A picture with its name for who cannot see it. It is drawn at once where the script that
 * draws is there, else as soon as it has come.
 */
export function drawing(name: string, draw: (pictures: typeof Pictures) => SVGElement): Element {
	const named = (picture: SVGElement) => {
		picture.setAttribute("role", "img");
		picture.style.width = `${Number(picture.getAttribute("width")) / 16}rem`;
		picture.setAttribute("aria-label", name);
		return picture;
	};
	if (pictures.there) return named(draw(pictures.there));
	const place = el("p", { class: "to-be-drawn" });
	pictures.bring().then(
		(there) => place.replaceWith(named(draw(there))),
		() => fill(place, say`This picture could not be loaded; the table has the numbers.`),
	);
	return place;
}

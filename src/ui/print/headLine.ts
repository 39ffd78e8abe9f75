import { say } from "../../core/say.ts";
import { el } from "../dom/el.ts";
import { notReviewed } from "../shell/notReviewed.ts";

/** First line of every printed page: whose it is, what and when, by which version, and whether anybody has reviewed its language. */
export function headLine(whose: string, when: string): HTMLElement {
	return el(
		"div",
		{ class: "printed-head" },
		el("strong", {}, whose),
		el("span", {}, when),
		el("span", {}, say`Basinbook ${document.body.dataset.version ?? ""}`),
		notReviewed !== "" && el("span", { class: "not-reviewed" }, notReviewed),
	);
}

import { el } from "../dom/el.ts";

/** A list of cautions; it stands where the act is. */
export function cautionList(cautions: readonly string[]): HTMLElement {
	return el(
		"aside",
		{ class: "cautions", "aria-label": "Cautions" },
		el("h2", {}, "Take care"),
		el("ul", {}, ...cautions.map((words) => el("li", {}, words))),
	);
}

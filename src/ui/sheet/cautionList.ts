import { say } from "../../core/say.ts";
import { el } from "../dom/el.ts";

/** A list of cautions; it stands where the act is. */
export function cautionList(cautions: readonly string[]): HTMLElement {
	return el(
		"aside",
		{ class: "cautions", "aria-label": say`Cautions` },
		el("h2", {}, say`Take care`),
		el("ul", {}, ...cautions.map((words) => el("li", {}, words))),
	);
}

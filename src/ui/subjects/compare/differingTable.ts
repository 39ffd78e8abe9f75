import { say } from "../../../core/say.ts";
import { el } from "../../dom/el.ts";
import { capital } from "../../format/capital.ts";
import type { DifferingSetting } from "./differingSettings.ts";
import type { Side } from "./side.ts";

/** The settings in which two sides differ. */
export function differingTable(
	differing: readonly DifferingSetting[],
	[left, right]: readonly [Side, Side],
): HTMLElement {
	if (differing.length === 0)
		return el("p", { class: "nothing" }, say`Both sides have the same settings and rounds.`);
	return el(
		"table",
		{ class: "brief compared" },
		el("caption", {}, say`What is set differently`),
		el(
			"thead",
			{},
			el(
				"tr",
				{},
				el("th", { scope: "col" }, say`Setting`),
				el("th", { scope: "col", class: "numeric" }, capital(left.title)),
				el("th", { scope: "col", class: "numeric" }, capital(right.title)),
			),
		),
		el(
			"tbody",
			{},
			...differing.map(({ label, unit, left: before, right: after }) =>
				el(
					"tr",
					{},
					el(
						"th",
						{ scope: "row" },
						label,
						unit !== "" && el("span", { class: "unit" }, ` ${unit}`),
					),
					el("td", { class: "numeric" }, before),
					el("td", { class: "numeric" }, after),
				),
			),
		),
	);
}

import { say } from "../../../core/say.ts";
import { unitSheet } from "../../../core/sheets/unit.ts";
import { type Child, el } from "../../dom/el.ts";
import type { Surroundings } from "../../page.ts";
import type { State } from "../../state/store.ts";
import { unitSetting } from "../../state/unitSetting.ts";

/** Room to write by hand, each with its words on one line. */
const TO_FILL_IN = [say`Whom to call: ______________`, say`Where to borrow: ______________`];

/** What the unit does when no kit is ready, as it wrote it once; else where to write it. */
export function whenNoneReady(state: State, goTo?: Surroundings["goTo"]): HTMLElement {
	const words = unitSetting(state, "when_none_ready") ?? "";
	return el(
		"section",
		{ class: "when-none-ready" },
		el("h2", {}, say`When no kit is ready`),
		words !== "" && el("p", { class: "none-ready-words" }, words),
		words === "" && el("p", {}, ...toFillIn()),
		words === "" &&
			goTo &&
			el(
				"button",
				{
					type: "button",
					class: "link",
					onclick: () => goTo({ file: unitSheet.file, line: null, column: "when_none_ready" }),
				},
				say`Write it once, in the settings`,
			),
	);
}

/** The same in one line, for the plan's paper. */
export function noneReadyLine(state: State): HTMLElement {
	const words = unitSetting(state, "when_none_ready");
	return el(
		"p",
		{ class: "none-ready-line" },
		el("strong", {}, say`When no kit is ready`),
		": ",
		...(words ? [words] : toFillIn()),
	);
}

function toFillIn(): Child[] {
	return TO_FILL_IN.flatMap((words) => [el("span", { class: "to-fill-in" }, words), " "]);
}

import { say } from "../../core/say.ts";
import { type Child, el } from "../dom/el.ts";
import { notReviewed } from "../shell/notReviewed.ts";
import type { State } from "../state/store.ts";
import { unitSetting } from "../state/unitSetting.ts";

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

/** Head of a page made for paper: unit, what and when, version, title. */
export function paperHead(state: State, title: string, when: string): Child[] {
	return [headLine(unitSetting(state, "unit_name") ?? "", when), el("h1", {}, title)];
}

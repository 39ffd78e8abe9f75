import type { State } from "../book/store.ts";
import { type Child, el } from "../dom/el.ts";
import { unitSetting } from "../views/unitSettings.ts";

/** Head of a page made for paper: unit, what and when, version. */
export function paperHead(state: State, title: string, when: string): Child[] {
	return [
		el(
			"div",
			{ class: "printed-head" },
			el("strong", {}, unitSetting(state, "unit_name") ?? ""),
			el("span", {}, when),
			el("span", {}, `Basinbook ${document.body.dataset.version ?? ""}`),
		),
		el("h1", {}, title),
	];
}

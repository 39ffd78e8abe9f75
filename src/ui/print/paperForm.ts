import { type Child, el } from "../dom/el.ts";
import { cautionList } from "../sheet/cautionList.ts";
import { standing } from "../shell/standing.ts";
import type { State } from "../state/store.ts";
import { unitSetting } from "../state/unitSetting.ts";
import { headLine } from "./headLine.ts";
import { planDays } from "./planDays.ts";

/** What stands on every page of a form. */
export interface EveryPage {
	readonly title: string;
	/** The days it is of; those of the plan where it says no others. */
	readonly when?: string;
	/** Whose it is, where it is not the unit's. */
	readonly whose?: string;
	/** What can hurt someone in the act that the form is for. */
	readonly cautions?: readonly string[];
	readonly way?: "upright" | "lying";
	/** Room to sign; without it the line that says whose word comes first. */
	readonly end?: readonly Child[];
}

/**
 * A form of any number of pages. Its head and its end are those of a table, which browsers
 * repeat on every page: so a page that has come loose still says whose it is, of which days,
 * by which version, with which cautions, and nobody signs a page that they do not see.
 *
 * The forms of one job all go one way.
 */
export function paperForm(
	state: State,
	className: string,
	{ title, when = planDays(state), whose, cautions = [], way = "upright", end }: EveryPage,
	...content: Child[]
): HTMLElement {
	return el(
		"section",
		{ class: `form-frame ${className} ${way}` },
		el(
			"div",
			{ class: "form-head" },
			headLine(whose ?? unitSetting(state, "unit_name") ?? "", when),
			el("h1", {}, title),
			cautions.length > 0 && cautionList(cautions),
		),
		el("div", { class: "form-body" }, ...content),
		el("div", { class: "form-end" }, ...(end ?? [el("p", { class: "standing" }, standing)])),
	);
}

import { say } from "../../core/say.ts";
import { type Child, el } from "../dom/el.ts";
import { standing } from "../shell/standing.ts";
import type { State } from "../state/store.ts";
import { unitSetting } from "../state/unitSetting.ts";
import { headLine } from "./headLine.ts";
import { planDays } from "./planDays.ts";

/** Head of a page that prints as it stands on the screen. */
export function printedHead(state: State): HTMLElement[] {
	return [headLine(unitSetting(state, "unit_name") ?? "", planDays(state))];
}

/** Who prepared and who checked, room to write, and whose word comes first. */
export function printedFoot(): Child[] {
	return [
		el(
			"div",
			{ class: "printed-foot" },
			el("span", { class: "write" }, say`Notes`),
			el("span", { class: "write short" }, say`Prepared by, date`),
			el("span", { class: "write short" }, say`Checked by, date`),
		),
		el("p", { class: "standing" }, standing),
	];
}

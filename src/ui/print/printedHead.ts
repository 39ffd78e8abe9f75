import { say } from "../../core/say.ts";
import { type Child, el } from "../dom/el.ts";
import { shownDayAndYear } from "../format/shownDay.ts";
import { standing } from "../shell/standing.ts";
import { daysOf } from "../state/daysOf.ts";
import type { State } from "../state/store.ts";
import { unitSetting } from "../state/unitSetting.ts";
import { headLine } from "./paperHead.ts";

/** Unit and dates, for the head of a printed page. */
export function printedHead(state: State): Child[] {
	const days = daysOf(state);
	const period =
		days.length === 0
			? ""
			: say`${shownDayAndYear(days[0] ?? "")} to ${shownDayAndYear(days.at(-1) ?? "")}`;
	return [headLine(unitSetting(state, "unit_name") ?? "", period)];
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

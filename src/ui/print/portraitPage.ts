import { say } from "../../core/say.ts";
import { type Child, el } from "../dom/el.ts";
import { shownDayAndYear } from "../format/shownDay.ts";
import { cautionList } from "../sheet/cautionList.ts";
import { daysOf } from "../state/daysOf.ts";
import type { State } from "../state/store.ts";
import { paperHead } from "./paperHead.ts";
import { printedFoot } from "./printedHead.ts";

/** A page to work by, upright: head, cautions where the act is, what to do, room to write and to sign. */
export function portraitPage(
	state: State,
	cautions: readonly string[],
	title: string,
	...content: Child[]
): HTMLElement {
	const days = daysOf(state);
	const [from = "", to = ""] = [days[0], days.at(-1)].map((day) => shownDayAndYear(day ?? ""));
	return el(
		"section",
		{ class: "portrait-page" },
		...paperHead(state, title, say`${from} to ${to}`),
		cautions.length > 0 && cautionList(cautions),
		...content,
		...printedFoot(),
	);
}

/** A table for paper: header cells, then groups of rows that stay together on a page. */
export function uprightTable(
	className: string,
	head: readonly Child[],
	groups: readonly HTMLElement[],
): HTMLElement {
	return el(
		"table",
		{ class: `upright-table ${className}` },
		el("thead", {}, el("tr", {}, ...head.map((words) => el("th", { scope: "col" }, words)))),
		...groups,
	);
}

import { say } from "../../../core/say.ts";
import { weekPlanSheet } from "../../../core/sheets/weekPlan.ts";
import { el, fill } from "../../dom/el.ts";
import type { SheetPart, Turning } from "../../page.ts";
import { printOut } from "../../print/printOut.ts";
import { hashOf } from "../../shell/hashOf.ts";
import type { State } from "../../state/store.ts";
import { everyWeekOut } from "./everyWeekOut.ts";
import { weekName } from "./weekName.ts";
import { chooseWeek, type ShownWeek, shownWeek, weeksOf } from "./weeksOf.ts";

/** The way from week to week of a long plan, over its cells; a plan of a week needs none. */
export function weekTurner({ store, turned }: Turning): SheetPart {
	const list = el("select", { id: "shown-week" });
	const step = (by: number) => () => {
		const at = (shownWeek(store.state)?.at ?? 0) + by;
		const week = weeksOf(store.state)[at];
		if (week) turn(week);
	};
	const before = el(
		"button",
		{ type: "button", onclick: step(-1), "aria-label": say`Week before` },
		"← ",
		roomy(say`Week before`),
	);
	const after = el(
		"button",
		{ type: "button", onclick: step(1), "aria-label": say`Next week` },
		roomy(say`Next week`),
		" →",
	);
	const onPaper = el("p", { class: "print-only" });
	const element = el(
		"div",
		{ class: "week-turner" },
		el(
			"div",
			{ class: "tools" },
			before,
			el("label", { for: "shown-week" }, say`Week`),
			list,
			after,
			el(
				"button",
				{ type: "button", onclick: () => printOut(everyWeekOut, store.state) },
				everyWeekOut.name,
			),
			el("a", { href: hashOf(weekPlanSheet.file) }, say`All weeks together`),
		),
		onPaper,
	);
	const turn = (week: ShownWeek) => {
		chooseWeek(week);
		turned();
	};
	list.addEventListener("change", () => {
		const week = weeksOf(store.state)[Number(list.value)];
		if (week) turn(week);
	});
	let listed = "";
	const paint = (state: State) => {
		const weeks = weeksOf(state);
		element.hidden = weeks.length < 2;
		const shown = shownWeek(state);
		if (element.hidden || !shown) return;
		const names = weeks.map((week) => weekName(week));
		if (names.join("\n") !== listed)
			fill(list, ...names.map((name, at) => el("option", { value: at }, name)));
		listed = names.join("\n");
		list.value = String(shown.at);
		onPaper.textContent = say`Week ${shown.at + 1} of ${weeks.length}: ${names[shown.at]}`;
		// A button that has the focus stays able to take it: it says that there is no further week.
		before.setAttribute("aria-disabled", String(shown.at === 0));
		after.setAttribute("aria-disabled", String(shown.at === weeks.length - 1));
	};
	return { element, paint };
}

/** Left out where there is no room for it. */
function roomy(words: string): HTMLElement {
	return el("span", { class: "roomy" }, words);
}

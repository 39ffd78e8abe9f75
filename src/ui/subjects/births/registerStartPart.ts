import { settingEntry } from "../../../core/edit/begin/settingEntry.ts";
import { FEWEST_DAYS } from "../../../core/forecast/forecast.ts";
import { type LevelChange, levelChange } from "../../../core/plan/births/levelChange.ts";
import { say } from "../../../core/say.ts";
import { type Child, el, fill } from "../../dom/el.ts";
import { counted } from "../../format/counted.ts";
import { shownDay } from "../../format/shownDay.ts";
import { shownNumber } from "../../format/shownNumber.ts";
import type { SheetPart, Surroundings } from "../../page.ts";
import type { State } from "../../state/store.ts";
import { unitSetting } from "../../state/unitSetting.ts";
import { registerOf } from "./registerOf.ts";

/** From which day births are learned: what a change of level was, and the way to start there, which undo takes back. */
export function registerStartPart({ store, tell }: Surroundings): SheetPart {
	const element = el("section", { class: "register-start", "aria-live": "polite" });
	const take = (text: string, words: string) => {
		const workbook = settingEntry("register_from").write(store.state.workbook, text);
		if (typeof workbook === "string") return tell([workbook]);
		store.edit(workbook);
		tell([words]);
	};
	const button = (words: string, onclick: () => void) =>
		el("button", { type: "button", onclick }, words);
	return {
		element,
		paint(state) {
			const from = unitSetting(state, "register_from");
			const change = changeIn(state);
			element.hidden = !from && !change;
			fill(
				element,
				...(from
					? [
							el("p", {}, startedWords(from)),
							button(say`Learn from the whole register again`, () =>
								take("", say`Births are learned from all recorded days again; Undo takes it back.`),
							),
						]
					: []),
				...(change
					? offer(
							change,
							button(say`Learn births from ${shownDay(change.since)} on`, () =>
								take(
									change.since,
									say`Births are learned from ${shownDay(change.since)} on; Undo takes it back.`,
								),
							),
						)
					: []),
			);
		},
	};
}

function changeIn(state: State): LevelChange | undefined {
	if (unitSetting(state, "births_from_register") !== "yes") return undefined;
	const register = registerOf(state);
	return register && levelChange(register.figures);
}

function startedWords(from: string): string {
	return say`Births are learned from ${shownDay(from)} on. What was recorded before is kept and teaches the forecast nothing.`;
}

/** What was recorded before and after first, and the question for a cause; the way out, with its cost, last. */
function offer(change: LevelChange, button: HTMLElement): Child[] {
	const { since, before, after, daysBefore, daysAfter } = change;
	const row = (when: string, births: number, days: number) =>
		el(
			"tr",
			{},
			el("th", { scope: "row" }, when),
			el("td", { class: "numeric" }, shownNumber(births, 1)),
			el("td", { class: "numeric" }, String(days)),
		);
	const day = shownDay(since);
	return [
		el(
			"table",
			{ class: "brief" },
			el("caption", {}, say`Births seem to have changed for good`),
			el(
				"thead",
				{},
				el(
					"tr",
					{},
					el("th", { scope: "col" }, say`Recorded`),
					el("th", { scope: "col", class: "numeric" }, say`births a day`),
					el("th", { scope: "col", class: "numeric" }, say`days`),
				),
			),
			el(
				"tbody",
				{},
				row(say`before ${day}`, before, daysBefore),
				row(say`from ${day} on`, after, daysAfter),
			),
		),
		el(
			"p",
			{},
			say`Is there a cause: a ward closed or opened, a fee, a road, a campaign, another way of writing births down? The forecast already follows what is new and forgets what is old, day by day.`,
		),
		el(
			"details",
			{},
			el("summary", {}, say`The cause is known, and it lasts`),
			el("p", {}, cost(daysBefore, daysAfter)),
			button,
		),
	];
}

function cost(daysBefore: number, daysAfter: number): string {
	const given = say`Births can be learned from that day on. It costs ${counted(daysBefore, "day")} of good records, also what they say of the days of the week, and the forecast is less sure until the new days are many.`;
	const chance = say`By chance alone 19 to 36 of 100 units look changed like this within two years.`;
	const short =
		daysAfter < FEWEST_DAYS
			? say`With ${counted(daysAfter, "day")} recorded since, births a day from the settings would lead until there are ${FEWEST_DAYS}: check that they are right.`
			: "";
	return [given, chance, short].filter(Boolean).join(" ");
}

import { hoursPlanned } from "../../../core/plan/record/hoursPlanned.ts";
import { readWorkbook } from "../../../core/read/readWorkbook.ts";
import { say } from "../../../core/say.ts";
import type { IsoDate } from "../../../core/values/date.ts";
import { el, fill } from "../../dom/el.ts";
import { named } from "../../dom/named.ts";
import { sentences } from "../../dom/sentences.ts";
import { shownDay, shownDayAndYear } from "../../format/shownDay.ts";
import { reprocessesAfterEachUse } from "../../state/reprocessesAfterEachUse.ts";
import type { State } from "../../state/store.ts";
import { chooseDay, chosenDay } from "./chosenDay.ts";
import { dayRounds, runDays } from "./dayRounds.ts";
import { descalingWords } from "./descalingWords.ts";
import { hoursWords } from "./hoursWords.ts";
import { needsOfDay } from "./needsOfDay.ts";
import { oneKitSteps } from "./oneKitSteps.ts";
import { timelineFigure } from "./timelineFigure.ts";
import { whoIsNeeded } from "./whoIsNeeded.ts";

const WIDEST_PX = 940;

/** One day of the run sheet: a way from day to day, the rounds in time, and who is needed when. */
export function runSheetView(state: State, room: number): HTMLElement | undefined {
	const width = Math.min(WIDEST_PX, Math.max(280, room));
	if (reprocessesAfterEachUse(state)) return asTheyCome(state, width);
	const days = runDays(state);
	const first = chosenDay(days);
	if (first === undefined) return undefined;
	const place = el("div", { class: "run-day" });
	const heading = el("h2", { "aria-live": "polite" });
	const list = el(
		"select",
		{ id: "run-day" },
		...days.map((day) => el("option", { value: day }, shownDayAndYear(day))),
	);
	const step = (by: number) => () => {
		const day = days[days.indexOf(list.value) + by];
		if (day !== undefined) show(day);
	};
	const before = el("button", { type: "button", onclick: step(-1) }, say`← Day before`);
	const after = el("button", { type: "button", onclick: step(1) }, say`Next day →`);
	const show = (day: IsoDate) => {
		chooseDay(day);
		list.value = day;
		heading.textContent = shownDay(day);
		// A button that has the focus stays able to take it: it says that there is no further day.
		before.setAttribute("aria-disabled", String(day === days[0]));
		after.setAttribute("aria-disabled", String(day === days.at(-1)));
		fill(place, ...dayParts(state, day, width));
	};
	list.addEventListener("change", () => show(list.value));
	show(first);
	const descaling = descalingWords(state);
	return el(
		"section",
		{ class: "run-sheet", "aria-label": say`One day` },
		el("div", { class: "tools day-chooser" }, before, named(say`Day`, list), after),
		heading,
		place,
		descaling !== "" && el("p", { class: "hint" }, descaling),
	);
}

function dayParts(state: State, day: IsoDate, width: number): (HTMLElement | undefined)[] {
	const rounds = dayRounds(state, day);
	return [
		el(
			"ul",
			{ class: "who" },
			...rounds.map((round) =>
				el("li", { class: round.waitsFor ? "reason" : undefined }, whoIsNeeded(round, day)),
			),
		),
		el(
			"ul",
			{ class: "round-needs" },
			...needsOfDay(state, day, rounds).map((words) => el("li", {}, ...sentences(words))),
		),
		hoursLine(state, day),
		timelineFigure(rounds, day, width),
	];
}

/** People's hours of the day, the fires' beside them; nothing where they are not known. */
function hoursLine(state: State, day: IsoDate): HTMLElement | undefined {
	const hours = hoursPlanned(state.plan, readWorkbook(state.workbook), day);
	if (!hours) return undefined;
	return el("p", { class: "hint" }, hoursWords(hours));
}

/** In words and minutes, where no clock sets the time. */
function asTheyCome(state: State, width: number): HTMLElement {
	const round = oneKitSteps(state);
	const figure = timelineFigure([round], undefined, width);
	return el(
		"section",
		{ class: "run-sheet", "aria-label": say`One kit` },
		el(
			"p",
			{ class: "in-words" },
			figure
				? say`This unit reprocesses each kit as soon as it has been used, so no clock times are set. Minute 0 is when the kit comes in; the printed sheet is for one kit.`
				: say`This unit reprocesses each kit as soon as it has been used. Its steps need: ${round.waitsFor}`,
		),
		figure,
	);
}

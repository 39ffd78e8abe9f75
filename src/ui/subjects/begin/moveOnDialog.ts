import { movedOn } from "../../../core/edit/movedOn.ts";
import { plannedDays } from "../../../core/plan/record/plannedDays.ts";
import { say } from "../../../core/say.ts";
import { type Child, el } from "../../dom/el.ts";
import { shownDay, shownDayAndYear } from "../../format/shownDay.ts";
import type { Surroundings } from "../../page.ts";
import { planTitle } from "../week/planTitle.ts";

const toDo = say`What to do now: count the store and enter it in its journal; enter births and kits used of the days past in the register; enter the readiness checks, and since when each kit has been ready; type births for days on which you expect more or fewer than usual; then save the workbook.`;

/** Says what moving on to the next period does, and does it where the person agrees: one step that can be undone. */
export function moveOnDialog({ store, goTo, tell }: Surroundings): void {
	const moved = movedOn(store.state.workbook, plannedDays(store.state.plan));
	const close = (words: string, act: () => void, main = false) =>
		el(
			"button",
			{
				type: "button",
				class: main ? "main" : undefined,
				onclick: () => {
					dialog.close();
					act();
				},
			},
			words,
		);
	const move = () => {
		if (!moved.ok) return;
		store.edit(moved.value.workbook);
		void goTo({ file: planTitle.file, line: null, column: "" });
		tell([
			say`The plan begins on ${shownDayAndYear(moved.value.first)} now; Undo takes it back.`,
			toDo,
		]);
	};
	const dialog = el(
		"dialog",
		{ "aria-label": say`Start from last week` },
		el("h2", {}, say`Start from last week`),
		...(moved.ok
			? [
					el(
						"p",
						{},
						say`The plan moves on to ${shownDayAndYear(moved.value.first)} to ${shownDayAndYear(moved.value.last)}.`,
					),
					...pastWords(moved.value.past),
					el(
						"p",
						{},
						say`What was planned for these days is kept, so that it can be shown beside what was done. Everything else stays: settings, rounds, kits, checks, lots, journal and register. An earlier workbook is opened first, with Open files.`,
					),
				]
			: moved.problems.map(({ message }) =>
					el("p", { class: "reason" }, say`This workbook cannot be moved on: ${message}`),
				)),
		el(
			"div",
			{ class: "choices-row" },
			moved.ok && close(say`Move on`, move, true),
			close(say`Leave it as it is`, () => {}),
		),
	);
	dialog.addEventListener("close", () => dialog.remove());
	document.body.append(dialog);
	dialog.showModal();
}

interface Past {
	readonly date: string;
	readonly births: string;
	readonly note: string;
}

function pastWords(past: readonly Past[]): Child[] {
	if (past.length === 0) return [el("p", {}, say`No births were typed for days that are past.`)];
	return [
		el(
			"p",
			{},
			say`Births that you expected on days now past are taken out; what really happened belongs in the register. The new days begin with the forecast, or with births a day. Taken out:`,
		),
		el(
			"ul",
			{ class: "moved-past" },
			...past.map(({ date, births, note }) =>
				el("li", {}, [`${shownDay(date)}: ${births}`, note].filter(Boolean).join(", ")),
			),
		),
	];
}

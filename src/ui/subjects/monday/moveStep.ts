import { routine, withTick } from "../../../core/edit/monday/routine.ts";
import { movedOn } from "../../../core/edit/movedOn.ts";
import { plannedDays } from "../../../core/plan/record/plannedDays.ts";
import { say } from "../../../core/say.ts";
import { birthsSheet } from "../../../core/sheets/births.ts";
import { type Child, el, fill } from "../../dom/el.ts";
import { shownDay, shownDayAndYear } from "../../format/shownDay.ts";
import { shownTyped } from "../../format/shownTyped.ts";
import type { State } from "../../state/store.ts";
import { LOOKED_AT, type StepPart } from "./mondayStep.ts";

/** Says what moving on to the next period does, and does it: one step that can be undone. */
export const moveStep: StepPart = ({ store }, { done }) => {
	const words = el("div", {});
	const move = el("button", { type: "button", class: "main" });
	move.addEventListener("click", () => {
		const { workbook, plan } = store.state;
		if (routine(workbook)?.hasMoved) return done(workbook, "");
		// Ticked before it moves: the tick names the week that is prepared.
		const moved = movedOn(withTick(workbook, "move", true), plannedDays(plan));
		if (!moved.ok) return;
		done(
			moved.value.workbook,
			say`The plan begins on ${shownDayAndYear(moved.value.first)} now; Undo takes it back.`,
		);
	});
	return {
		element: el("div", {}, words, move),
		paint(state) {
			const now = routine(state.workbook);
			move.hidden = now === undefined;
			move.textContent = now?.hasMoved
				? LOOKED_AT
				: say`Move on to ${shownDay(now?.prepares ?? "")}`;
			fill(words, ...whatItDoes(state, now?.hasMoved ?? false));
		},
	};
};

function whatItDoes(state: State, hasMoved: boolean): Child[] {
	if (hasMoved) return [el("p", {}, say`The plan has moved on.`)];
	const moved = movedOn(state.workbook, []);
	if (!moved.ok)
		return moved.problems.map(({ message }) =>
			el("p", { class: "reason" }, say`This workbook cannot be moved on: ${message}`),
		);
	const { first, last, past } = moved.value;
	return [
		el(
			"p",
			{},
			say`The plan moves on to ${shownDayAndYear(first)} to ${shownDayAndYear(last)}. What was planned for the days past is kept, so that it can be shown beside what was done. Everything else stays.`,
		),
		past.length > 0 &&
			el(
				"p",
				{},
				say`Your own figures of births on days now past are taken out; what really happened belongs under “Births and kits used, day by day”. The new days begin with the forecast, or with births a day. Taken out:`,
			),
		past.length > 0 &&
			el(
				"ul",
				{ class: "moved-past" },
				...past.map(({ date, births, note }) =>
					el(
						"li",
						{},
						[say`${shownDay(date)}: ${shownTyped(births, birthsSheet.columns.births.value)}`, note]
							.filter(Boolean)
							.join(", "),
					),
				),
			),
	];
}

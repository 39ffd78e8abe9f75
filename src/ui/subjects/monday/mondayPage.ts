import {
	type RoutineStep,
	routine,
	routineSteps,
	withNextRoutine,
} from "../../../core/edit/monday/routine.ts";
import { say } from "../../../core/say.ts";
import { el, fill } from "../../dom/el.ts";
import { renew } from "../../dom/renew.ts";
import { saveWorkbook } from "../../files/saveWorkbook.ts";
import { shownDay } from "../../format/shownDay.ts";
import type { OwnPage, View } from "../../page.ts";
import { cautionList } from "../../sheet/cautionList.ts";
import { pageHead } from "../../sheet/pageHead.ts";
import type { State } from "../../state/store.ts";
import { storeCautions } from "../store/storeCautions.ts";
import { changesStep } from "./changesStep.ts";
import { countStep } from "./countStep.ts";
import { daysStep } from "./daysStep.ts";
import { type MondayStep, mondayStep, type StepPart } from "./mondayStep.ts";
import { mondayTitle } from "./mondayTitle.ts";
import { moveStep } from "./moveStep.ts";
import { ordersStep } from "./ordersStep.ts";
import { printStep } from "./printStep.ts";
import { usageStep } from "./usageStep.ts";

const parts: Readonly<Record<RoutineStep, readonly [title: string, part: StepPart]>> = {
	days: [say`Complete last week's days`, daysStep],
	counts: [say`Count the store`, countStep],
	orders: [say`Orders on the way, and what is ordered now`, ordersStep],
	usage: [say`Usage to take over from the books`, usageStep],
	move: [say`Move on to the new week`, moveStep],
	changes: [say`What the new plan changes`, changesStep],
	print: [say`Print this week`, printStep],
};

/** The weekly routine, one step after the other, which keeps its place. */
export const mondayPage: OwnPage = {
	mount(place, around) {
		const { store } = around;
		const title = el("h1", {});
		const next = (after: RoutineStep) => {
			const at = routineSteps.indexOf(after);
			const done = routine(store.state.workbook)?.done;
			const open = steps.find(({ step }, i) => i > at && !done?.has(step));
			(open ?? { focus: () => save.focus() }).focus();
		};
		const steps: readonly MondayStep[] = routineSteps.map((step) => {
			const [words, part] = parts[step];
			return mondayStep(step, words, around, part, next);
		});
		const save = el(
			"button",
			{ type: "button", class: "main", onclick: () => saveWorkbook(store) },
			say`Save the workbook`,
		);
		const anew = el(
			"button",
			{ type: "button", onclick: () => store.edit(withNextRoutine(store.state.workbook)) },
			say`Begin the next week's routine`,
		);
		const reason = el("p", { class: "reason" });
		fill(
			place,
			pageHead(title, mondayTitle.about),
			reason,
			el("ol", { class: "monday" }, ...steps.map(({ element }) => element)),
			el("div", { class: "tools" }, save, anew),
			cautionList(storeCautions),
		);
		const view: View = {
			file: mondayTitle.file,
			paint(state) {
				const now = routine(state.workbook);
				renew(title, headline(state));
				anew.hidden = !now?.hasMoved;
				fill(reason, now ? undefined : say`The routine needs the first day of the plan.`);
				if (now) for (const step of steps) step.paint(state, now);
			},
			show() {},
			destroy() {},
		};
		view.paint(store.state);
		return view;
	},
};

function headline({ workbook }: State): string {
	const now = routine(workbook);
	if (!now) return mondayTitle.title;
	const week = shownDay(now.prepares);
	const done = now.done.size;
	if (done === 0) return say`Monday: prepare the week from ${week}`;
	if (done === routineSteps.length) return say`The week from ${week} is prepared`;
	return say`The week from ${week}: ${done} of ${routineSteps.length} steps are done`;
}

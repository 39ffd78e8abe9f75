import { type Routine, type RoutineStep, withTick } from "../../../core/edit/monday/routine.ts";
import { say } from "../../../core/say.ts";
import type { Workbook } from "../../../core/workbook.ts";
import { el, fill } from "../../dom/el.ts";
import type { SheetPart, Surroundings } from "../../page.ts";
import type { State } from "../../state/store.ts";

/** What a step does with the page around it. */
export interface StepActs {
	/** Takes the workbook over with the step ticked, and says what was done. */
	done(workbook: Workbook, words: string): void;
	/** Takes the workbook over; the step stays open. */
	keep(workbook: Workbook, words: string): void;
}

/** What stands in a step while it is open. */
export type StepPart = (around: Surroundings, acts: StepActs) => SheetPart;

/** A step of the routine on the page. */
export interface MondayStep {
	readonly step: RoutineStep;
	readonly element: HTMLElement;
	paint(state: State, routine: Routine): void;
	/** Puts the focus where the step is worked at. */
	focus(): void;
}

/**
 * A step with its tick. One that is ticked shows its title and what was done in it; its
 * part comes back when the tick is taken out.
 *
 * @param next goes on after the step has been done
 */
export function mondayStep(
	step: RoutineStep,
	title: string,
	around: Surroundings,
	make: StepPart,
	next: (step: RoutineStep) => void,
): MondayStep {
	const { store } = around;
	const tick = el("input", { type: "checkbox", id: `monday-${step}` });
	const said = el("p", { class: "monday-said", role: "status" });
	let saidOf: Workbook | undefined;
	const write = (workbook: Workbook, words: string) => {
		saidOf = workbook;
		fill(said, words);
		store.edit(workbook);
	};
	const part = make(around, {
		done(workbook, words) {
			write(withTick(workbook, step, true), words);
			next(step);
		},
		keep: write,
	});
	tick.addEventListener("change", () =>
		store.edit(withTick(store.state.workbook, step, tick.checked)),
	);
	const element = el(
		"li",
		{ class: "monday-step" },
		el("div", { class: "monday-head" }, el("h2", {}, el("label", { for: tick.id }, tick, title))),
		said,
		part.element,
	);
	return {
		step,
		element,
		paint(state, { done }) {
			const isDone = done.has(step);
			tick.checked = isDone;
			element.classList.toggle("done", isDone);
			part.element.hidden = isDone;
			// What was said of an entry that was undone no longer holds; later steps leave it alone.
			if (!state.canUndo || (saidOf !== state.workbook && !isDone)) fill(said);
			part.paint(state);
		},
		focus() {
			const first = part.element.querySelector<HTMLElement>("input, select, button");
			(first && !part.element.hidden ? first : tick).focus();
		},
	};
}

/** What the button of a step is called that has nothing to enter. */
export const LOOKED_AT = say`Looked at`;

import { type Plan, plan } from "../../core/plan.ts";
import type { Problem } from "../../core/problem.ts";
import type { Workbook } from "../../core/workbook.ts";

/** The workbook on the screen and everything that follows from it. */
export interface State {
	readonly workbook: Workbook;
	readonly plan: Plan;
	/** What was found wrong while files were read in; kept until the next files. */
	readonly reading: readonly Problem[];
	/** Set where this program failed: the text is safe, the numbers are not there. */
	readonly programError?: string;
	readonly canUndo: boolean;
	readonly canRedo: boolean;
	/** True once anything differs from what was opened or last saved to a file. */
	readonly unsaved: boolean;
}

type Listener = (state: State) => void;

const MOST_STEPS_BACK = 500;
const noPlan: Plan = { tables: {}, problems: [], made: false };

/**
 * Holds the workbook of the moment. An edit makes a new workbook and a new plan;
 * undo is the workbook before. Nothing else in the page remembers data.
 */
export class Store {
	#past: Workbook[] = [];
	#future: Workbook[] = [];
	#workbook: Workbook;
	#saved: Workbook;
	#reading: readonly Problem[] = [];
	#listeners: Listener[] = [];
	#state: State;

	constructor(workbook: Workbook) {
		this.#workbook = workbook;
		this.#saved = workbook;
		this.#state = this.#makeState();
	}

	get state(): State {
		return this.#state;
	}

	subscribe(listener: Listener): void {
		this.#listeners.push(listener);
	}

	edit(next: Workbook): void {
		if (next === this.#workbook) return;
		this.#past = [...this.#past.slice(-MOST_STEPS_BACK + 1), this.#workbook];
		this.#future = [];
		this.#show(next);
	}

	/** Another workbook altogether: one step that can be undone like any other. */
	open(next: Workbook, reading: readonly Problem[] = []): void {
		this.#reading = reading;
		this.#saved = next;
		this.edit(next);
	}

	/** Nothing could be opened: only what was found wrong is shown. */
	report(reading: readonly Problem[]): void {
		this.#reading = reading;
		this.#show(this.#workbook);
	}

	undo(): void {
		const before = this.#past.pop();
		if (!before) return;
		this.#future.push(this.#workbook);
		this.#show(before);
	}

	redo(): void {
		const after = this.#future.pop();
		if (!after) return;
		this.#past.push(this.#workbook);
		this.#show(after);
	}

	markSaved(): void {
		this.#saved = this.#workbook;
		this.#show(this.#workbook);
	}

	#show(workbook: Workbook): void {
		this.#workbook = workbook;
		this.#state = this.#makeState();
		for (const listener of this.#listeners) listener(this.#state);
	}

	#makeState(): State {
		return {
			workbook: this.#workbook,
			...planned(this.#workbook),
			reading: this.#reading,
			canUndo: this.#past.length > 0,
			canRedo: this.#future.length > 0,
			unsaved: this.#workbook !== this.#saved,
		};
	}
}

function planned(workbook: Workbook): Pick<State, "plan" | "programError"> {
	try {
		return { plan: plan(workbook) };
	} catch (error) {
		return { plan: noPlan, programError: error instanceof Error ? error.message : String(error) };
	}
}

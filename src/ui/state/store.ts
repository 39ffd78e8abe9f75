import { withLineIds } from "../../core/edit/withLineIds.ts";
import type { Descent } from "../../core/merge/descent.ts";
import { noPlan, type Plan, plan } from "../../core/plan/plan.ts";
import type { Problem } from "../../core/problem.ts";
import type { IsoDate } from "../../core/values/date.ts";
import type { TextTable, Workbook } from "../../core/workbook.ts";
import type { SavedFile } from "../files/savedFile.ts";
import { lineMark } from "./lineMark.ts";

/** Where a workbook is saved. */
export interface Saved {
	/** What was opened or last saved; absent for a draft, which is in no file yet. */
	readonly saved?: Workbook;
	/** The file that Save writes to. */
	readonly file?: SavedFile;
	/** Name among the downloads, where the browser cannot write files. */
	readonly download?: string;
	/** Where it comes from, up to its last save; absent where its files remembered nothing. */
	readonly descent?: Descent;
	/** Set where it came out of the person's own files, or went into one: not the demo. */
	readonly own?: true;
}

/**
 * One workbook from its opening on, through all its edits: undo may lead back into
 * another one, and that one is saved in a file of its own.
 */
export interface Book {
	in: Saved;
}

/** The workbook on the screen and everything that follows from it. */
export interface State {
	readonly workbook: Workbook;
	readonly plan: Plan;
	/** The day on which the plan was made; undefined where no clock was asked. */
	readonly today: IsoDate | undefined;
	/** What was found wrong while files were read in; kept until the next files. */
	readonly reading: readonly Problem[];
	/** Set where this program failed: the text is safe, the numbers are not there. */
	readonly programError?: string;
	readonly canUndo: boolean;
	readonly canRedo: boolean;
	/** True once anything differs from what was opened or last saved to a file. */
	readonly unsaved: boolean;
	readonly book: Book;
}

type Listener = (state: State) => void;

interface Step {
	readonly workbook: Workbook;
	readonly book: Book;
}

/**
 * Holds the workbook of the moment. An edit makes a new workbook and a new plan;
 * undo is the workbook before, as far back as the visit goes: workbooks share what
 * an edit left alone. Nothing else in the page remembers data.
 */
export class Store {
	#past: Step[] = [];
	#future: Step[] = [];
	#now: Step;
	#reading: readonly Problem[] = [];
	#listeners: Listener[] = [];
	readonly #today: () => IsoDate | undefined;
	#state: State;

	/** @param today by a clock; left out, the plan holds nothing against a clock */
	constructor(workbook: Workbook, today: () => IsoDate | undefined = () => undefined) {
		this.#today = today;
		this.#now = { workbook, book: { in: { saved: workbook } } };
		this.#state = this.#makeState();
	}

	get state(): State {
		return this.#state;
	}

	/** @returns what ends it */
	subscribe(listener: Listener): () => void {
		this.#listeners.push(listener);
		return () => {
			this.#listeners = this.#listeners.filter((each) => each !== listener);
		};
	}

	/** What a person entered or changed. Each line entered gets a mark of its own. */
	edit(next: Workbook): void {
		if (next === this.#now.workbook) return;
		const workbook = withLineIds(this.#now.workbook, next, lineMark);
		this.#goOn({ workbook, book: this.#now.book });
	}

	/** Sheets out of files in place of those that are there. */
	takeIn(next: Workbook, reading: readonly Problem[]): void {
		this.#reading = reading;
		this.#goOn({ workbook: next, book: this.#now.book });
	}

	/**
	 * This workbook and another copy of it as one, to be saved in the same file. It comes from
	 * both; undo leads back to where it came from before, too.
	 *
	 * @param file that file, where somebody else wrote the other copy into it
	 */
	bringTogether(workbook: Workbook, descent: Descent, file = this.#now.book.in.file): void {
		const saved = { ...this.#now.book.in, descent, ...(file && { file }) };
		this.#goOn({ workbook, book: { in: saved } });
	}

	/** Another workbook altogether: one step that can be undone like any other. */
	open(next: Workbook, reading: readonly Problem[] = [], saved: Saved = { saved: next }): void {
		this.#reading = reading;
		this.#goOn({ workbook: next, book: { in: saved } });
	}

	/** Nothing could be opened: only what was found wrong is shown. */
	report(reading: readonly Problem[]): void {
		this.#reading = reading;
		this.#show(this.#now);
	}

	undo(): void {
		this.#step(this.#past, this.#future);
	}

	redo(): void {
		this.#step(this.#future, this.#past);
	}

	/** A book was saved; what was edited in it meanwhile is not. */
	markSaved(book: Book, saved: Saved): void {
		book.in = saved;
		this.#show(this.#now);
	}

	/**
	 * Drawing for which the whole plan has to be known, as a piece for `soon`: the plan is
	 * worked out a part at a time until it is.
	 */
	whole(draw: (state: State) => void): () => boolean {
		return () => {
			try {
				if (this.#state.plan.goOn()) return true;
			} catch (error) {
				this.#fail(error);
				return false;
			}
			draw(this.#state);
			return false;
		};
	}

	#goOn(next: Step): void {
		if (next.workbook !== this.#now.workbook) {
			this.#past.push(letGo(this.#now, next));
			this.#future = [];
		}
		this.#show(next);
	}

	#step(from: Step[], to: Step[]): void {
		const next = from.pop();
		if (!next) return;
		to.push(letGo(this.#now, next));
		this.#show(next);
	}

	#show(now: Step): void {
		this.#now = now;
		this.#state = this.#makeState();
		try {
			this.#tell();
		} catch (error) {
			this.#fail(error);
		}
	}

	#tell(): void {
		for (const listener of this.#listeners) listener(this.#state);
	}

	/** A mistake of this program: what the plan says is not to be trusted. */
	#fail(error: unknown): void {
		if (this.#state.programError !== undefined) throw error;
		this.#state = { ...this.#state, ...failed(error) };
		this.#tell();
	}

	#makeState(): State {
		const { workbook, book } = this.#now;
		const today = this.#today();
		return {
			workbook,
			today,
			...planned(workbook, today),
			reading: this.#reading,
			canUndo: this.#past.length > 0,
			canRedo: this.#future.length > 0,
			unsaved: !book.in.saved || !isSame(workbook, book.in.saved),
			book,
		};
	}
}

/**
 * A step that is kept for later. A table that the next step changed becomes another
 * object with the same rows: what was worked out from it can then be forgotten, and
 * thousands of steps take no more room than their texts.
 */
function letGo({ workbook, book }: Step, { workbook: next }: Step): Step {
	const kept = Object.entries(workbook.tables).map(([file, table]): [string, TextTable] => [
		file,
		next.tables[file] === table ? table : { ...table },
	]);
	return { workbook: { ...workbook, tables: Object.fromEntries(kept) }, book };
}

/** Two workbooks are the same where they hold the same rows of cells, and not only equal ones. */
function isSame(one: Workbook, other: Workbook): boolean {
	const files = Object.keys({ ...one.tables, ...other.tables });
	return files.every((file) => one.tables[file]?.rows === other.tables[file]?.rows);
}

function planned(
	workbook: Workbook,
	today: IsoDate | undefined,
): Pick<State, "plan" | "programError"> {
	try {
		return { plan: plan(workbook, today) };
	} catch (error) {
		return failed(error);
	}
}

function failed(error: unknown): Pick<State, "plan" | "programError"> {
	return { plan: noPlan, programError: error instanceof Error ? error.message : String(error) };
}

/** The state with its plan worked out to the end. */
export function wholeState(state: State): State {
	try {
		while (state.plan.goOn());
		return state;
	} catch (error) {
		return { ...state, ...failed(error) };
	}
}

import { type Tried, type TriedOn, triedOn } from "../../../core/edit/trial/triedOn.ts";
import { unitNameIn } from "../../../core/sheets/unitNameIn.ts";
import type { Book, State } from "../../state/store.ts";

/** Where the browser keeps it through a reload of this window; no file and no draft has it. */
const KEPT_AS = "basinbook-tried";

const byBook = new WeakMap<Book, Tried>();

/** A copy of the open workbook with what a person tries on it. */
export function trialOf(state: State): TriedOn {
	return triedOn(state.workbook, textsTried(state));
}

/** What is tried on the open workbook; another workbook has a trial of its own. */
export function textsTried({ book, workbook }: State): Tried {
	return byBook.get(book) ?? left(unitNameIn(workbook));
}

/** Tries another text for an entry; undefined takes it out of the trial. */
export function tryText(state: State, key: string, text: string | undefined): void {
	const texts = new Map(textsTried(state));
	if (text === undefined) texts.delete(key);
	else texts.set(key, text);
	keep(state, texts);
}

/** Ends the trial: nothing of it is left. */
export function throwAway(state: State): void {
	keep(state, new Map());
}

function keep({ book, workbook }: State, texts: Tried): void {
	byBook.set(book, texts);
	const unit = unitNameIn(workbook);
	try {
		if (texts.size === 0) sessionStorage.removeItem(KEPT_AS);
		else sessionStorage.setItem(KEPT_AS, JSON.stringify({ unit, texts: [...texts] }));
	} catch {
		// A browser that keeps nothing loses the trial with the page, and nothing else.
	}
}

/** What was tried for this unit before the page was loaded again. */
function left(unit: string): Tried {
	try {
		const kept = JSON.parse(sessionStorage.getItem(KEPT_AS) ?? "null");
		if (kept?.unit !== unit || !Array.isArray(kept.texts)) return new Map();
		return new Map(
			kept.texts.filter((each: unknown) => Array.isArray(each) && each.every(isText)) as [
				string,
				string,
			][],
		);
	} catch {
		return new Map();
	}
}

function isText(value: unknown): boolean {
	return typeof value === "string";
}

import { dayPlanSheet } from "../../core/sheets/dayPlan.ts";
import { isTyped, sheetOf } from "../../core/sheets/sheetOf.ts";
import { folded } from "../grid/folded.ts";
import { pages } from "../pages.ts";
import { daysOf } from "../state/daysOf.ts";
import type { State } from "../state/store.ts";
import { areListed, cellsIn } from "./cellsIn.ts";
import type { Findable } from "./findable.ts";
import { namesIn } from "./namesIn.ts";

/** More hits than these are counted and not listed. */
export const MOST_HITS = 50;
/** In a longer plan, working out the sheets nobody has looked at would make a search wait. */
const LONG_PLAN_DAYS = 31;

export interface Search {
	readonly hits: readonly Findable[];
	/** All hits, listed or not. */
	readonly count: number;
	/** Computed sheets that were not searched, because working them out would take long. */
	readonly left: readonly string[];
	readonly done: boolean;
}

interface SearchOptions {
	/** Also works out the sheets that a search of a long plan leaves out. */
	readonly everySheet: boolean;
	pause(): Promise<void>;
	/** True once nobody wants the answer any more. */
	stopped(): boolean;
}

/**
 * Searches the workbook: what is typed and named at once, then the computed sheets one
 * by one. Gives what is found so far after the first part, and all of it at the end.
 */
export async function* search(
	state: State,
	words: string,
	{ everySheet, pause, stopped }: SearchOptions,
): AsyncGenerator<Search> {
	const wanted = folded(words.trim());
	const hits: Findable[] = [];
	let count = 0;
	const add = (all: readonly Findable[]) => {
		for (const one of all) {
			if (!one.folded.includes(wanted)) continue;
			count += 1;
			if (hits.length < MOST_HITS) hits.push(one);
		}
	};
	const files = pages.map(({ file }) => file);
	const computed = files.filter((file) => sheetOf(file) !== undefined && !isTyped(file));
	const isLong = daysOf(state).length > LONG_PLAN_DAYS && !everySheet;
	const left = computed.filter(
		(file) => isLong && file !== dayPlanSheet.file && !areListed(state, file),
	);
	const searched = computed.filter((file) => !left.includes(file));
	add(namesIn(state));
	for (const file of files) if (!computed.includes(file)) add(await cellsIn(state, file, pause));
	yield { hits: [...hits], count, left, done: false };
	for (const file of searched) {
		if (stopped()) return;
		add(await cellsIn(state, file, pause));
	}
	yield { hits, count, left, done: true };
}

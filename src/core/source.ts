import { say } from "./say.ts";

/**
 * How sure a source is.
 * "seen": read in the place named. "from memory": remembered, not read again.
 * "derived": arithmetic on something seen. "estimate": a starting value to replace.
 */
export type Mark =
	| "seen"
	| "from memory"
	| "derived"
	| "estimate"
	| "definition"
	| "common practice, no source";

export interface Source {
	readonly title: string;
	readonly mark: Mark;
	/** Edition, year, page or table. */
	readonly place?: string;
	readonly url?: string;
	/** Where other sources say something else, what they say. */
	readonly disagreement?: string;
}

export const definition: Source = { title: say`Definition`, mark: "definition" };
export const commonPractice: Source = {
	title: say`Common practice, no source`,
	mark: "common practice, no source",
};
export const estimate: Source = {
	title: say`Estimate: a starting value, to be replaced by the unit's own`,
	mark: "estimate",
};
/** Chosen by this program, and by nobody else that was found. */
export const ownRule: Source = {
	title: say`A rule of this program, found nowhere else; your own comes first`,
	mark: "estimate",
};

import type { Figure } from "../calculation.ts";
import type { RoundsOfDay } from "../rounds/roundsOfDay.ts";

/** What is expected of one measure, and what to set aside. */
export interface Pair {
	readonly expected: Figure;
	readonly setAside: Figure;
}

/** The counts of a day, or of the whole plan, from which everything else follows. */
export interface CountFigures {
	readonly births: Pair;
	readonly kitsUsed: Pair;
	readonly kitsExpired: Pair;
	readonly kitsToReprocess: Pair;
	readonly roundsThatRun: Pair;
	readonly loads: Pair;
	readonly preparations: Pair;
	/** Product for them, as measured out from the lots in the store. */
	readonly product: Pair;
	readonly rounds: Figure<RoundsOfDay[]>;
}

import type { Figure } from "../calculation.ts";
import type { LoadMethod } from "../methods/method.ts";
import type { RoundsOfDay } from "../rounds/roundsOfDay.ts";

/** What is expected of one measure, and what to set aside. */
export interface Pair {
	readonly expected: Figure;
	readonly setAside: Figure;
}

/** Something of the loads of each method that some kit goes by. */
export type LoadsByMethod<T> = Readonly<Partial<Record<LoadMethod, T>>>;

/** The counts of a day, or of the whole plan, from which everything else follows. */
export interface CountFigures {
	readonly births: Pair;
	readonly kitsUsed: Pair;
	readonly kitsExpired: Pair;
	readonly kitsToReprocess: Pair;
	readonly roundsThatRun: Pair;
	readonly loads: LoadsByMethod<Pair>;
	readonly preparations: Pair;
	/** Product for them, as measured out from the lots in the store. */
	readonly product: Pair;
	readonly rounds: Figure<RoundsOfDay[]>;
}

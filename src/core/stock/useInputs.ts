import type { RoundsOfDay } from "../rounds/roundsOfDay.ts";
import type { Rates } from "./ratesOfItem.ts";

/** What the use of an item over some days goes by. */
export interface UseInputs {
	readonly rates: Rates;
	readonly days: readonly RoundsOfDay[];
	readonly kitsInLoad: number;
	/** Rounds that run between descalings; 0: never. */
	readonly descaleEvery: number;
}

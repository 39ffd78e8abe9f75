import type { Loads } from "../rounds/loads.ts";
import type { RoundsOfDay } from "../rounds/roundsOfDay.ts";
import type { Rates } from "./ratesOfItem.ts";

/** What the use of an item over some days goes by. */
export interface UseInputs {
	readonly rates: Rates;
	readonly days: readonly RoundsOfDay[];
	readonly loads: Loads;
	/** Rounds that run between descalings; 0: never. */
	readonly descaleEvery: number;
}

import type { InRounds } from "./roundsGoneThrough.ts";
import type { AfterEachUse } from "./unmetAfterEachUse.ts";
import type { SentAway } from "./unmetSentAway.ts";

/** When kits come back: at the end of rounds, each after its own work, or from where rounds send them. */
export type Reprocessing = (InRounds | AfterEachUse | SentAway) & {
	/** Where births are forecast: what is not known of them. */
	readonly forecast?: ForecastUses;
};

export interface ForecastUses {
	/** Shape of the Gamma multiplier of a day's forecast births. */
	readonly shape: number;
	/** Of each day's uses, those by a figure of the unit's own. */
	readonly sure: readonly number[];
}

import { memoizeByObject } from "../memoize.ts";
import type { InRounds } from "./roundsGoneThrough.ts";
import { type AfterEachUse, UnmetAfterEachUse } from "./unmetAfterEachUse.ts";
import { UnmetInRounds } from "./unmetInRounds.ts";

/** When kits come back: at the end of rounds, or each after its own work. */
export type Reprocessing = InRounds | AfterEachUse;

/** Uses that find no kit ready, of 1,000; what numbers of kits have in common is worked out once. */
export function unmetPer1000(kits: number, reprocessing: Reprocessing): number {
	return kits === 0 ? 1000 : unmetOf(reprocessing).per1000(kits);
}

const unmetOf = memoizeByObject((reprocessing: Reprocessing) =>
	reprocessing.kind === "in_rounds"
		? new UnmetInRounds(reprocessing)
		: new UnmetAfterEachUse(reprocessing),
);

/** Whether the rounds of a unit can take all kits that come; where they cannot, no number of kits is enough. */
export function keepsUp(reprocessing: Reprocessing): boolean {
	const unmet = unmetOf(reprocessing);
	return !(unmet instanceof UnmetInRounds) || unmet.keepsUp;
}

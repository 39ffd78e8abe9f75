import { memoize, memoizeByObject } from "../memoize.ts";
import type { Reprocessing } from "./reprocessing.ts";
import { UnmetAfterEachUse } from "./unmetAfterEachUse.ts";
import { UnmetInRounds } from "./unmetInRounds.ts";
import { UnmetSentAway } from "./unmetSentAway.ts";
import { usesAtLevels } from "./usesAtLevels.ts";

/**
 * Uses that find no kit ready, of 1,000; what numbers of kits have in common is worked out
 * once. Where births are forecast, mixed over their level: more needs come when births are
 * many, and then they find fewer kits.
 */
export function unmetPer1000(kits: number, reprocessing: Reprocessing): number {
	return overLevels(kits, reprocessing, true);
}

/** Never more than `unmetPer1000`, and found much sooner: kits gone out of date are left out. */
export function leastUnmetPer1000(kits: number, reprocessing: Reprocessing): number {
	return overLevels(kits, reprocessing, false);
}

/** Never more than `unmetPer1000` with so many kits or more, and found at once; 0 where nothing is known of it. */
export function unmetWithMore(kits: number, reprocessing: Reprocessing): number {
	return usesAtLevels(reprocessing).reduce((sum, { at, share }) => {
		const unmet = unmetOf(at);
		return sum + (unmet instanceof UnmetInRounds ? share * unmet.leastWithMore(kits) : 0);
	}, 0);
}

function overLevels(kits: number, reprocessing: Reprocessing, renewing: boolean): number {
	return kits === 0 ? 1000 : unmetWith(reprocessing)(kits, renewing);
}

/** Those of a curve, of a search for the number needed and of a change are often the same. */
const unmetWith = memoizeByObject((reprocessing: Reprocessing) =>
	memoize((kits: number, renewing: boolean) =>
		usesAtLevels(reprocessing).reduce(
			(sum, { at, share }) => sum + share * unmetOf(at).per1000(kits, renewing),
			0,
		),
	),
);

const unmetOf = memoizeByObject((reprocessing: Reprocessing) => {
	if (reprocessing.kind === "in_rounds") return new UnmetInRounds(reprocessing);
	return reprocessing.kind === "sent_away"
		? new UnmetSentAway(reprocessing)
		: new UnmetAfterEachUse(reprocessing);
});

/** Whether the rounds of a unit can take all kits that come; where they cannot, no number of kits is enough. */
export function keepsUp(reprocessing: Reprocessing): boolean {
	const unmet = unmetOf(reprocessing);
	return !(unmet instanceof UnmetInRounds) || unmet.keepsUp;
}

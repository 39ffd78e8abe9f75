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
 *
 * @param enough a sum beyond which it need not be known: what is given back then is more than that, and no more than it is
 */
export function unmetPer1000(
	kits: number,
	reprocessing: Reprocessing,
	enough = Number.POSITIVE_INFINITY,
): number {
	return overLevels(kits, reprocessing, true, enough);
}

/** Never more than `unmetPer1000`, and found much sooner: kits gone out of date are left out. */
export function leastUnmetPer1000(
	kits: number,
	reprocessing: Reprocessing,
	enough = Number.POSITIVE_INFINITY,
): number {
	return overLevels(kits, reprocessing, false, enough);
}

/** Never more than `unmetPer1000` with so many kits or more, and found at once; 0 where nothing is known of it. */
export function unmetWithMore(kits: number, reprocessing: Reprocessing): number {
	return usesAtLevels(reprocessing).reduce((sum, { at, share }) => {
		const unmet = unmetOf(at);
		return sum + (unmet instanceof UnmetInRounds ? share * unmet.leastWithMore(kits) : 0);
	}, 0);
}

/** What all lower levels together add is not seen where it is less than this part. */
const UNSEEN = 1e-15;

/** From the highest level down: there most is unmet, and what lower ones can add is soon too little to be seen. */
function overLevels(
	kits: number,
	reprocessing: Reprocessing,
	renewing: boolean,
	enough: number,
): number {
	if (kits === 0) return 1000;
	const renewed = renewing && keepsForSomeDays(reprocessing);
	const fewestAtFewest = reprocessing.kind === "in_rounds" && !renewed;
	let sum = 0;
	let lower = 1;
	for (const { at, share } of usesAtLevels(reprocessing).toReversed()) {
		const unmet = unmetWith(at)(kits, renewed);
		sum += share * unmet;
		lower -= share;
		if (sum > enough || (fewestAtFewest && lower * unmet < UNSEEN * sum)) break;
	}
	return sum;
}

function keepsForSomeDays(reprocessing: Reprocessing): boolean {
	if (reprocessing.kind === "in_rounds") return reprocessing.life !== null;
	return reprocessing.kind === "after_each_use" && reprocessing.readyLifeDays !== null;
}

/** Those of a curve, of a search for the number needed and of a change are often the same. */
const unmetWith = memoizeByObject((level: Reprocessing) =>
	memoize((kits: number, renewing: boolean) => unmetOf(level).per1000(kits, renewing)),
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

import { lastUsableDay } from "../../chlorine/lastUsableDay.ts";
import { asLabelled } from "../../chlorine/shownStrength.ts";
import { valueIn } from "../../outcome.ts";
import type { IsoDate } from "../../values/date.ts";
import type { LotFigures } from "./lotFigures.ts";
import type { StoreLots } from "./storeLots.ts";

/**
 * Last day on which amounts measured out for the first day still make the strength
 * wanted: a lot fades, and what was rounded up is all the room there is.
 *
 * @param weakestMadePct strength made on the first day by the weakest of the amounts, %
 * @returns undefined where they do not on the first day, null where no end is in sight
 */
export function amountsHoldUntil(
	{ firstDay, targetPct }: Pick<StoreLots, "firstDay" | "targetPct">,
	{ lot, strengthOn }: Pick<LotFigures, "lot" | "strengthOn">,
	weakestMadePct: number,
): IsoDate | null | undefined {
	const today = valueIn(strengthOn(firstDay));
	if (!today || weakestMadePct < targetPct) return undefined;
	const leastPct = (asLabelled(today) * targetPct) / weakestMadePct;
	return lastUsableDay(strengthOn, leastPct, firstDay, lot.value.expires_on);
}

import type { AlikeBatches, Hearth } from "./batch.ts";
import { NEAR } from "./timesFull.ts";

/**
 * Whether stoves and pots have as many minutes as all batches take, from the first that may
 * be lit to the last that must have cooled: where they have not, no order need be tried.
 */
export function haveRoom(
	batches: readonly AlikeBatches[],
	{ stoves, pots }: Pick<Hearth, "stoves" | "pots">,
): boolean {
	if (batches.length === 0) return true;
	let [lit, off, cool] = [Infinity, -Infinity, -Infinity];
	let [onStoves, inPots] = [0, 0];
	for (const { batch, times } of batches) {
		const { pots: count, stoveMinutes, potMinutes, earliestEnd, latestEnd } = batch;
		lit = Math.min(lit, earliestEnd - stoveMinutes);
		off = Math.max(off, latestEnd);
		cool = Math.max(cool, latestEnd - stoveMinutes + potMinutes);
		// Each may begin and end that much beside its time, as rounding is allowed to.
		onStoves += times * (stoveMinutes - 2 * NEAR);
		inPots += times * count * (potMinutes - 2 * NEAR);
	}
	return onStoves <= stoves * (off - lit) && inPots <= pots * (cool - lit);
}

import type { Batch, Hearth } from "./batch.ts";
import { NEAR } from "./timesFull.ts";

/**
 * Whether stoves and pots have as many minutes as all batches take, from the first that may
 * be lit to the last that must have cooled: where they have not, no order need be tried.
 */
export function haveRoom(
	batches: readonly Batch[],
	{ stoves, pots }: Pick<Hearth, "stoves" | "pots">,
): boolean {
	if (batches.length === 0) return true;
	const lit = Math.min(
		...batches.map(({ earliestEnd, stoveMinutes }) => earliestEnd - stoveMinutes),
	);
	const off = Math.max(...batches.map(({ latestEnd }) => latestEnd));
	const cool = Math.max(
		...batches.map(
			({ latestEnd, stoveMinutes, potMinutes }) => latestEnd - stoveMinutes + potMinutes,
		),
	);
	let [onStoves, inPots] = [0, 0];
	for (const { pots: count, stoveMinutes, potMinutes } of batches) {
		// Each may begin and end that much beside its time, as rounding is allowed to.
		onStoves += stoveMinutes - 2 * NEAR;
		inPots += count * (potMinutes - 2 * NEAR);
	}
	return onStoves <= stoves * (off - lit) && inPots <= pots * (cool - lit);
}

import type { Hearth, WaterNeed } from "./batch.ts";
import { canBeScheduled } from "./boilingSchedule.ts";

/** More than any unit has. */
const MOST = 40;

/** The fewest pots with which all water is ready in time; undefined where no number of pots is enough. */
export function fewestPots(needs: readonly WaterNeed[], hearth: Hearth): number | undefined {
	const allOnStove = hearth.potsOnStove >= hearth.pots;
	for (let pots = 1; pots <= MOST; pots++) {
		const potsOnStove = allOnStove ? pots : hearth.potsOnStove;
		if (canBeScheduled(needs, { ...hearth, pots, potsOnStove })) return pots;
	}
	return undefined;
}

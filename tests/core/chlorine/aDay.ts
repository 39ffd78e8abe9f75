import type { RoundsOfDay } from "../../../src/core/rounds/roundsOfDay.ts";

/** A day of rounds with the mean kits of each. */
export const inRounds = (starts: readonly number[], kits: readonly number[]): RoundsOfDay => ({
	kind: "in_rounds",
	starts,
	kits,
	byKind: [kits],
});

/** A day on which each kit is reprocessed as it is used. */
export const oneByOne = (kits: number): RoundsOfDay => ({
	kind: "after_each_use",
	kits: [kits],
	byKind: [[kits]],
});

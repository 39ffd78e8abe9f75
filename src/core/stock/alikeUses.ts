import type { Counts } from "../counts/counts.ts";
import type { AlikeRounds } from "./descaledRounds.ts";

/** Use of rounds that are alike. */
export interface AlikeUse extends AlikeRounds {
	/** Of one that runs, with the chance that it runs. */
	readonly running: Counts;
}

/** Rounds with one use and one chance of standing still, however they are mixed: the days of a plan are mostly alike. */
export function alikeUses(used: readonly Counts[], idle: readonly number[]): AlikeUse[] {
	const kinds = new Map<Counts, Map<number, { times: number; idle: number; running: Counts }>>();
	used.forEach((use, round) => {
		const still = idle[round] as number;
		const ofUse = kinds.get(use) ?? new Map();
		kinds.set(use, ofUse);
		const known = ofUse.get(still);
		if (known) known.times++;
		else ofUse.set(still, { times: 1, idle: still, running: whenRunning(use, still) });
	});
	return [...kinds.values()].flatMap((ofUse) => [...ofUse.values()]);
}

/** The use of rounds with the chance that none runs taken out of the amount 0. */
export function whenRunning(use: Counts, idle: number): Counts {
	const chance = Float64Array.from(use.chance);
	if (use.first === 0) chance[0] = Math.max(0, (chance[0] as number) - idle);
	return { first: use.first, chance };
}

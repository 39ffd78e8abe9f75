import { poissonTerms } from "../counts/poisson.ts";
import { onceAsked } from "../onceAsked.ts";
import type { AwayAt } from "./awayThroughDay.ts";
import { addTimes } from "./kitsInQueue.ts";
import { ofOneKind } from "./ofOneKind.ts";

/** A moment with the mean uses about then. */
interface UsesAt {
	readonly uses: number;
	readonly away: AwayAt;
}

/**
 * Mean uses at these moments that find none, by the number of kits: those at which as many
 * wait, are worked on or are left alone. Added up over all moments once, however many
 * numbers of kits are asked for.
 *
 * @param share part of the kits out of reach, and of those that come to them, that are of the kind asked for
 */
export function unmetInQueues(moments: readonly UsesAt[], share: number): (kits: number) => number {
	const unmet = onceAsked(() => {
		const uses = ofOneKind(usesByAway(moments), share);
		for (let n = uses.length - 2; n >= 0; n--)
			uses[n] = (uses[n] as number) + (uses[n + 1] as number);
		return uses;
	});
	return (kits) => unmet()[kits] ?? 0;
}

/** Mean uses at which just 0, 1, … kits are out of reach. */
function usesByAway(moments: readonly UsesAt[]): Float64Array {
	const usesOf = new Map<AwayAt, number>();
	for (const { uses, away } of moments) usesOf.set(away, (usesOf.get(away) ?? 0) + uses);
	const alike = [...usesOf].map(([{ queue, alone }, uses]) => ({
		uses,
		queue,
		alone: poissonTerms(alone),
	}));
	const ends = alike.map(
		({ queue, alone: { first, chance } }) => queue.length + first + chance.length,
	);
	const away = new Float64Array(Math.max(...ends));
	for (const { uses, queue, alone } of alike)
		for (let n = 0; n < queue.length; n++) {
			const { first, chance } = alone;
			addTimes(away, n + first, chance, chance.length, uses * (queue[n] as number));
		}
	return away;
}

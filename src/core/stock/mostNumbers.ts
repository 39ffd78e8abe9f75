import type { Counts } from "../counts/counts.ts";
import { groupsOf } from "../counts/groupsOf.ts";
import { poissonTerms } from "../counts/poisson.ts";
import { spread } from "../counts/spread.ts";
import { sumOf } from "../counts/sumOf.ts";
import { MOST_OBJECTS, memoize } from "../memoize.ts";

/** What some rounds come to together. */
export interface Numbers {
	/** That run. */
	readonly rounds: number;
	/** Beyond the first of each round; all of them where rounds are not followed. */
	readonly moreLoads: number;
	readonly kits: number;
}

/** What use goes by. */
export interface GoesBy {
	readonly rounds: boolean;
	readonly loads: boolean;
	readonly kits: boolean;
}

/** The largest numbers that are followed; 0 where use does not go by them. */
export const mostNumbers = memoize(
	(means: readonly number[], kitsInLoad: number, goesBy: GoesBy): Numbers => {
		const last = ({ first, chance }: Counts) => first + chance.length - 1;
		const all = means.reduce((sum, mean) => sum + mean, 0);
		const loads = (mean: number) =>
			spread(groupsOf(poissonTerms(mean), kitsInLoad), (count) =>
				goesBy.rounds ? Math.max(0, count - 1) : count,
			);
		return {
			rounds: goesBy.rounds ? means.length : 0,
			moreLoads: goesBy.loads ? last(sumOf(means.map(loads))) : 0,
			kits: goesBy.kits ? last(poissonTerms(all)) : 0,
		};
	},
	(means, kitsInLoad, { rounds, loads, kits }) => [rounds, loads, kits, kitsInLoad, ...means],
	MOST_OBJECTS,
);

import { laguerreNodes } from "../counts/laguerreNodes.ts";
import { memoizeByObject } from "../memoize.ts";
import type { Reprocessing } from "./reprocessing.ts";
import { roomPerDay } from "./roomPerDay.ts";

/** Reprocessing with the uses that come at one level of births. */
interface UsesAtLevel {
	readonly at: Reprocessing;
	/** Chance of the level. */
	readonly chance: number;
	/** Part of all uses that come at it: what a baby in need meets. */
	readonly share: number;
}

/** From this shape on a level moves unmet needs by less than 1 in 100. */
const WELL_KNOWN = 1500;
/** So many nodes hold unmet needs with up to ten kits; a wide level asks for more. */
const NODES = 4;
const WIDE_BELOW = 20;
const NODES_IF_WIDE = 8;
/**
 * Share of what can be reprocessed in a day up to which a level is followed: beyond it the
 * kits that wait only grow with the days, whatever the number of kits.
 */
const FULLEST = 0.95;

/** The levels over which cover is mixed; one where nothing is forecast, or it is well known. */
export const usesAtLevels = memoizeByObject(
	(reprocessing: Reprocessing): readonly UsesAtLevel[] => {
		const { forecast, ...known } = reprocessing;
		if (!forecast || forecast.shape > WELL_KNOWN) return [{ at: known, chance: 1, share: 1 }];
		const { shape, sure } = forecast;
		const most = FULLEST * roomPerDay(known);
		const levels = laguerreNodes(shape, shape < WIDE_BELOW ? NODES_IF_WIDE : NODES).map(
			({ factor, weight }) => {
				const usesPerDay = known.usesPerDay.map((uses, day) =>
					Math.min(
						Math.max(most, uses),
						(sure[day] as number) + factor * (uses - (sure[day] as number)),
					),
				);
				const uses = usesPerDay.reduce((sum, each) => sum + each, 0);
				return { at: { ...known, usesPerDay }, chance: weight, share: weight * uses };
			},
		);
		const uses = levels.reduce((sum, { share }) => sum + share, 0);
		if (uses === 0) return [{ at: known, chance: 1, share: 1 }];
		return alikeTogether(levels).map((level) => ({ ...level, share: level.share / uses }));
	},
);

/** Levels at which births are more than can be followed bring the same uses: where rounds are nearly full, most of them. */
function alikeTogether(levels: readonly UsesAtLevel[]): UsesAtLevel[] {
	const alike = new Map<string, UsesAtLevel>();
	for (const level of levels) {
		const name = level.at.usesPerDay.join();
		const { chance, share } = alike.get(name) ?? { chance: 0, share: 0 };
		alike.set(name, {
			at: alike.get(name)?.at ?? level.at,
			chance: chance + level.chance,
			share: share + level.share,
		});
	}
	return [...alike.values()];
}

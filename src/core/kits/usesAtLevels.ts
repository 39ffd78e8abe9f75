import { laguerreNodes } from "../counts/laguerreNodes.ts";
import { memoizeByObject } from "../memoize.ts";
import { MINUTES_PER_DAY } from "../values/clock.ts";
import type { Reprocessing } from "./reprocessing.ts";

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
/** Share of their time up to which people can be busy and still have a steady answer. */
const FULLEST = 0.95;

/** The levels over which cover is mixed; one where nothing is forecast, or it is well known. */
export const usesAtLevels = memoizeByObject(
	(reprocessing: Reprocessing): readonly UsesAtLevel[] => {
		const { forecast, ...known } = reprocessing;
		if (!forecast || forecast.shape > WELL_KNOWN) return [{ at: known, chance: 1, share: 1 }];
		const { shape, sure } = forecast;
		const most = mostUses(known);
		const levels = laguerreNodes(shape, shape < WIDE_BELOW ? NODES_IF_WIDE : NODES).map(
			({ factor, weight }) => {
				const usesPerDay = known.usesPerDay.map((uses, day) =>
					Math.min(most, (sure[day] as number) + factor * (uses - (sure[day] as number))),
				);
				const uses = usesPerDay.reduce((sum, each) => sum + each, 0);
				return { at: { ...known, usesPerDay }, chance: weight, share: weight * uses };
			},
		);
		const uses = levels.reduce((sum, { share }) => sum + share, 0);
		if (uses === 0) return [{ at: known, chance: 1, share: 1 }];
		return levels.map((level) => ({ ...level, share: level.share / uses }));
	},
);

function mostUses(known: Reprocessing): number {
	if (known.kind === "in_rounds") return Number.POSITIVE_INFINITY;
	return (FULLEST * known.hands.people * MINUTES_PER_DAY) / known.hands.workMinutes;
}

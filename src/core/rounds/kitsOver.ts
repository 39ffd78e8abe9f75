import type { Counts } from "../counts/counts.ts";
import { negativeBinomial } from "../counts/negativeBinomial.ts";
import { poisson } from "../counts/poisson.ts";
import { spanShape } from "../counts/spanShape.ts";
import { plus } from "../counts/sumOf.ts";
import { memoizeByObject } from "../memoize.ts";
import { sumOfAll } from "../sumOfAll.ts";
import { givenLevel, kitsAtLevel } from "./atLevel.ts";
import type { RoundsOfDay } from "./roundsOfDay.ts";

/** How likely each number of kits is over days that share a level of births: Poisson, and negative binomial with what goes with the level. */
export const kitsOver = memoizeByObject((days: readonly RoundsOfDay[]): Counts => {
	const shape = spanShape(days.flatMap(({ forecast }) => (forecast ? [forecast.level] : [])));
	const sure = sumOfAll(days.map(sureKits));
	const byLevel = negativeBinomial(shape, sumOfAll(days.map(kitsAtLevel)));
	return sure === 0 ? byLevel : plus(poisson(sure), byLevel);
});

/** The same of one day, which is Poisson at each level. */
export const kitsOfDay = memoizeByObject((rounds: RoundsOfDay): Counts => {
	const kits = kitsOver([rounds]);
	if (!rounds.forecast) return kits;
	const { given } = givenLevel(rounds, (known) => poisson(sumOfAll(known.kits)));
	return { ...kits, given: { ...given, sure: sureKits(rounds) } };
});

/** Mean kits that do not go with the level of births. */
function sureKits({ kits, forecast }: RoundsOfDay): number {
	return sumOfAll(forecast ? forecast.sure.flat() : kits);
}

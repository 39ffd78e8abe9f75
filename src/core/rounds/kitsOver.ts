import type { Counts } from "../counts/counts.ts";
import { delaporte } from "../counts/delaporte.ts";
import { poisson } from "../counts/poisson.ts";
import { spanShape } from "../counts/spanShape.ts";
import { memoizeByObject } from "../memoize.ts";
import { sumOfAll } from "../sumOfAll.ts";
import { givenLevel, kitsAtLevel } from "./atLevel.ts";
import type { RoundsOfDay } from "./roundsOfDay.ts";

/** How likely each number of kits is over days that share a level of births: Poisson, and negative binomial with what goes with the level. */
export const kitsOver = memoizeByObject((days: readonly RoundsOfDay[]): Counts => {
	const shape = spanShape(days.flatMap(({ forecast }) => (forecast ? [forecast.level] : [])));
	const sure = sumOfAll(days.map(sureKits));
	return delaporte(sure, shape, sumOfAll(days.map(kitsAtLevel)));
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

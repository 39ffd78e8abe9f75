import type { Counts } from "../counts/counts.ts";
import { longTotal } from "../counts/longTotal.ts";
import { type Moments, momentsOf, momentsOfSum } from "../counts/moments.ts";
import { sumOf } from "../counts/sumOf.ts";
import { ofEach } from "../ofEach.ts";
import { knownAtLevel } from "../rounds/atLevel.ts";
import type { RoundsOfDay } from "../rounds/roundsOfDay.ts";
import { runningRounds } from "../rounds/roundsThatRun.ts";
import type { Steps } from "./commonStep.ts";
import { momentsOfUse } from "./momentsOfUse.ts";
import type { UseInputs } from "./useInputs.ts";

/**
 * Use with descalings over days whose births vary far more by their level than by themselves: by its mean,
 * variance and skewness at each value of the level. Added up at some values of it, most amounts would lie between
 * those of one value and the next.
 *
 * Each round takes its part of a descaling; what the last one begun is more than that is added, as if it
 * did not hang on the other use.
 *
 * @param shape of the Gamma level
 */
export function descaledAtLevel(use: UseInputs, shape: number, steps: Steps): Counts {
	const { rates, days, loads, descaleEvery } = use;
	const perRound = rates.perRound + rates.perDescale / descaleEvery;
	const even = { rates: { ...rates, perRound }, loads };
	const descaling = steps.of(rates.perDescale);
	const momentsOn = momentsOfUse(even, steps);
	const momentsAt = (factor: number) => {
		const known = ofEach(days, (day) => knownAtLevel(day)(factor));
		const each = ofEach(known, momentsOn);
		const amounts = [...each.map(() => 1), descaling];
		return momentsOfSum([...each, begun(known, descaleEvery)], amounts);
	};
	return longTotal(shape, momentsAt, steps.most);
}

/** By how much descalings are more than the rounds that run ÷ rounds between them. */
function begun(days: readonly RoundsOfDay[], every: number): Moments {
	const run = sumOf(days.map(({ kits }) => runningRounds(kits)));
	const parts = new Float64Array(every);
	run.chance.forEach((chance, i) => {
		const left = (every - ((run.first + i) % every)) % every;
		parts[left] = (parts[left] as number) + chance;
	});
	const { mean, variance, third } = momentsOf({ first: 0, chance: parts });
	return {
		mean: mean / every,
		variance: variance / every ** 2,
		third: third / every ** 3,
		most: 1,
	};
}

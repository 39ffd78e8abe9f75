import type { Counts } from "../counts/counts.ts";
import { spanShape } from "../counts/spanShape.ts";
import { moved } from "../counts/spread.ts";
import { memoizeByObject } from "../memoize.ts";
import type { RoundsOfDay } from "../rounds/roundsOfDay.ts";
import { sumOfAll } from "../sumOfAll.ts";
import type { Steps } from "./commonStep.ts";
import type { UseInputs } from "./useInputs.ts";
import { type KitsOfKinds, type Taken, useOfKinds } from "./useOfKinds.ts";

/**
 * Use over the days, in steps, where it goes by their kits and no round matters: kits reprocessed one by one, each
 * a round and a load of its own, and items of which rounds, loads and descalings take nothing.
 *
 * @returns nothing where rounds matter
 */
export function usedByKits(use: UseInputs, steps: Steps): Counts | undefined {
	const taken = takenByKits(use, steps);
	if (!taken) return undefined;
	const { rates, days } = use;
	return moved(
		useOfKinds(kitsOfDays(days), taken, steps.most),
		steps.of(rates.perDay * days.length),
	);
}

function takenByKits({ rates, days, descaleEvery }: UseInputs, { of }: Steps): Taken | undefined {
	const ofEach = of(rates.perRound) + sumOfAll(rates.perLoad.map(of));
	const perGroup = descaleEvery > 0 ? of(rates.perDescale) : 0;
	const isOneByOne = days.every(({ kind }) => kind === "after_each_use");
	if (!isOneByOne && (ofEach > 0 || perGroup > 0)) return undefined;
	const perKit = rates.perKit.map((each) => of(each) + ofEach);
	return { perKit, once: 0, perGroup, groupOf: Math.max(1, descaleEvery) };
}

/** Mean kits of each kind over some days. */
const kitsOfDays = memoizeByObject((days: readonly RoundsOfDay[]): KitsOfKinds => {
	const kinds = (days[0] as RoundsOfDay).byKind;
	const added = (kitsOf: (day: RoundsOfDay) => RoundsOfDay["byKind"]) =>
		kinds.map((_, kind) =>
			sumOfAll(days.map((day) => sumOfAll(kitsOf(day)[kind] as readonly number[]))),
		);
	const all = added(({ byKind }) => byKind);
	const sure = added(({ byKind, forecast }) => forecast?.sure ?? byKind);
	return {
		shape: spanShape(days.flatMap(({ forecast }) => (forecast ? [forecast.level] : []))),
		byLevel: all.map((kits, kind) => Math.max(0, kits - (sure[kind] as number))),
		sure,
	};
});

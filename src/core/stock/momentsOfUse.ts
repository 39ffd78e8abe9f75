import { type Moments, mixedMoments, momentsOfSum } from "../counts/moments.ts";
import { poisson } from "../counts/poisson.ts";
import type { RoundsOfDay } from "../rounds/roundsOfDay.ts";
import { sumOfAll } from "../sumOfAll.ts";
import type { Steps } from "./commonStep.ts";
import type { UseInputs } from "./useInputs.ts";

/**
 * The moments of the use on a day whose births are known, without descalings, in steps: those of
 * its rounds added up. As of the amounts that `stepsUsed` finds, none of which has to be listed.
 */
export function momentsOfUse(
	{ rates, loads }: Pick<UseInputs, "rates" | "loads">,
	day: RoundsOfDay,
	{ of }: Steps,
): Moments {
	const perRound = of(rates.perRound);
	const perLoad = rates.perLoad.map(of);
	const perKit = rates.perKit.map(of);
	const inLoad = loads.map(({ kits }) => kits);
	const ofRound = (kits: number) => {
		let use = perRound;
		for (let i = 0; i < perLoad.length; i++)
			use += (perLoad[i] as number) * Math.ceil(kits / (inLoad[i] as number));
		return kits === 0 ? 0 : use;
	};
	// Each kit a round and a load of its own.
	const ofOne = perRound + sumOfAll(perLoad);
	const ofNumber = day.kind === "after_each_use" ? (kits: number) => kits * ofOne : ofRound;
	const rounds = day.kits.map((_, round) =>
		momentsOfRound(
			day.byKind.map((kits) => kits[round] as number),
			perKit,
			ofNumber,
		),
	);
	return momentsOfSum([known(of(rates.perDay)), ...rounds], undefined);
}

/** By the number of its kits, each of which is of one kind or another by chance. */
function momentsOfRound(
	means: readonly number[],
	perKit: readonly number[],
	ofNumber: (kits: number) => number,
): Moments {
	const all = sumOfAll(means);
	if (all === 0) return known(0);
	const kinds = means.map((mean, kind) => ({ factor: perKit[kind] as number, weight: mean / all }));
	const kit = mixedMoments(kinds, known);
	const { first, chance } = poisson(all);
	const use = Float64Array.from(chance, (_, i) => (first + i) * kit.mean + ofNumber(first + i));
	let mean = 0;
	for (let i = 0; i < use.length; i++) mean += (chance[i] as number) * (use[i] as number);
	let [variance, third] = [0, 0];
	for (let i = 0; i < use.length; i++) {
		const away = (use[i] as number) - mean;
		const ofKits = (first + i) * kit.variance;
		const p = chance[i] as number;
		variance += p * (ofKits + away ** 2);
		third += p * ((first + i) * kit.third + 3 * away * ofKits + away ** 3);
	}
	const last = first + chance.length - 1;
	return { mean, variance, third, most: last * kit.most + ofNumber(last) };
}

/** An amount that is known. */
function known(amount: number): Moments {
	return { mean: amount, variance: 0, third: 0, most: amount };
}

import { type Moments, mixedMoments, momentsOfSum } from "../counts/moments.ts";
import { poissonTerms } from "../counts/poisson.ts";
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
	// After each use, each kit is a round and a load of its own.
	const ofOne = day.kind === "after_each_use" ? perRound + sumOfAll(perLoad) : 0;
	const eachKit = ofOne === 0 ? perKit : perKit.map((use) => use + ofOne);
	const inLoad = loads.map(({ kits }) => kits);
	const withLoads = perLoad.some((use) => use > 0);
	const rounds = day.kits.map((_, round) => {
		const kits = kitsOfRound(day, round, eachKit);
		if (day.kind === "after_each_use") return withRound(kits, 0);
		return withLoads ? byNumber(kits, perRound, perLoad, inLoad) : withRound(kits, perRound);
	});
	return momentsOfSum([known(of(rates.perDay)), ...rounds], undefined);
}

/** The mean number of kits, and what one of them uses, which is of one kind or another by chance. */
interface Kits {
	readonly number: number;
	readonly kit: Moments;
}

function kitsOfRound(day: RoundsOfDay, round: number, perKit: readonly number[]): Kits {
	const means = day.byKind.map((kits) => kits[round] as number);
	const number = sumOfAll(means);
	if (number === 0) return { number, kit: known(0) };
	const kinds = means.map((mean, kind) => ({
		factor: perKit[kind] as number,
		weight: mean / number,
	}));
	return { number, kit: mixedMoments(kinds, known) };
}

/** A Poisson number of kits, and what a round uses once where there are any. */
function withRound({ number, kit }: Kits, perRound: number): Moments {
	const idle = Math.exp(-number);
	const runs = -Math.expm1(-number);
	// Cumulants of the kits' own use: its moments about 0 for one kit, times their number.
	const mean = number * kit.mean;
	const variance = number * (kit.variance + kit.mean ** 2);
	const third = number * (kit.third + 3 * kit.mean * kit.variance + kit.mean ** 3);
	const uneven = 1 - 2 * runs;
	const most = hardlyEver(number);
	return {
		mean: mean + perRound * runs,
		variance: variance + 2 * perRound * mean * idle + perRound ** 2 * runs * idle,
		third:
			third +
			3 * perRound * idle * (variance - mean ** 2) +
			3 * perRound ** 2 * uneven * mean * idle +
			perRound ** 3 * runs * idle * uneven,
		most: most * kit.most + (most > 0 ? perRound : 0),
	};
}

/** As many kits hardly ever come: far beyond what `poisson` lists. */
function hardlyEver(mean: number): number {
	return mean === 0 ? 0 : Math.ceil(mean + 9 * Math.sqrt(mean) + 40);
}

/** What each number of kits uses, in a list that is kept: a new one each time would be much to tidy up. */
let room = new Float64Array(256);

/** Number by number, where what a round uses goes by its loads. */
function byNumber(
	{ number, kit }: Kits,
	perRound: number,
	perLoad: readonly number[],
	inLoad: readonly number[],
): Moments {
	const { first, chance } = poissonTerms(number);
	if (room.length < chance.length) room = new Float64Array(2 * chance.length);
	const use = room;
	let mean = 0;
	for (let i = 0; i < chance.length; i++) {
		const kits = first + i;
		let all = kits === 0 ? 0 : perRound + kits * kit.mean;
		for (let method = 0; method < perLoad.length; method++)
			all += (perLoad[method] as number) * Math.ceil(kits / (inLoad[method] as number));
		use[i] = all;
		mean += (chance[i] as number) * all;
	}
	let [variance, third] = [0, 0];
	for (let i = 0; i < chance.length; i++) {
		const away = (use[i] as number) - mean;
		const ofKits = (first + i) * kit.variance;
		const p = chance[i] as number;
		variance += p * (ofKits + away * away);
		third += p * ((first + i) * kit.third + 3 * away * ofKits + away * away * away);
	}
	const kits = first + chance.length - 1;
	const most = (use[chance.length - 1] as number) + kits * (kit.most - kit.mean);
	return { mean, variance, third, most };
}

/** An amount that is known. */
function known(amount: number): Moments {
	return { mean: amount, variance: 0, third: 0, most: amount };
}

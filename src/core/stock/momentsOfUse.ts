import type { Moments } from "../counts/moments.ts";
import type { RoundsOfDay } from "../rounds/roundsOfDay.ts";
import { sumOfAll } from "../sumOfAll.ts";
import type { Steps } from "./commonStep.ts";
import { type LoadsAndKits, loadsAndKits } from "./loadsAndKits.ts";
import type { UseInputs } from "./useInputs.ts";

/**
 * The moments of the use on a day whose births are known, without descalings, in steps: those of
 * its rounds added up. As of the amounts that `stepsUsed` finds, none of which has to be listed.
 */
export function momentsOfUse(
	{ rates, loads }: Pick<UseInputs, "rates" | "loads">,
	{ of }: Steps,
): (day: RoundsOfDay) => Moments {
	const perDay = of(rates.perDay);
	const perRound = of(rates.perRound);
	const perKit = rates.perKit.map(of);
	const perLoad = rates.perLoad.map(of);
	const withLoads = perLoad.some((use) => use > 0);
	// After each use, each kit is a round and a load of its own.
	const ofOne = perRound + sumOfAll(perLoad);
	const perKitOfOne = perKit.map((use) => use + ofOne);
	return (day) => {
		const oneByOne = day.kind === "after_each_use";
		const numbers = withLoads && !oneByOne ? loadsAndKits(day, loads) : undefined;
		let [mean, variance, third, most] = [perDay, 0, 0, perDay];
		for (let round = 0; round < day.kits.length; round++) {
			const kits = kitsOfRound(day, round, oneByOne ? perKitOfOne : perKit);
			const used = numbers ? withLoadsOf(numbers, round, kits, perLoad) : kitsAlone(kits);
			const all = oneByOne ? used : withRound(used, kits.number, perRound);
			mean += all.mean;
			variance += all.variance;
			third += all.third;
			most += all.most;
		}
		return { mean, variance, third, most };
	};
}

/** The mean number of kits, and what one of them uses, which is of one kind or another by chance. */
interface Kits {
	readonly number: number;
	readonly kit: Moments;
}

function kitsOfRound({ byKind }: RoundsOfDay, round: number, perKit: readonly number[]): Kits {
	let [number, sum, most] = [0, 0, 0];
	for (let kind = 0; kind < byKind.length; kind++) {
		const kits = byKind[kind]?.[round] as number;
		const use = perKit[kind] as number;
		number += kits;
		sum += kits * use;
		if (use > most) most = use;
	}
	if (number === 0) return { number, kit: none };
	const mean = sum / number;
	let [variance, third] = [0, 0];
	for (let kind = 0; kind < byKind.length; kind++) {
		const weight = (byKind[kind]?.[round] as number) / number;
		const away = (perKit[kind] as number) - mean;
		variance += weight * away * away;
		third += weight * away * away * away;
	}
	return { number, kit: { mean, variance, third, most } };
}

const none: Moments = { mean: 0, variance: 0, third: 0, most: 0 };

/** A Poisson number of kits. */
function kitsAlone({ number, kit }: Kits): Moments {
	// Cumulants of the kits' own use: its moments about 0 for one kit, times their number.
	return {
		mean: number * kit.mean,
		variance: number * (kit.variance + kit.mean ** 2),
		third: number * (kit.third + 3 * kit.mean * kit.variance + kit.mean ** 3),
		most: hardlyEver(number) * kit.most,
	};
}

/** The same with what their loads use. */
function withLoadsOf(
	{ counted, ofRound, numbers }: LoadsAndKits,
	round: number,
	{ number, kit }: Kits,
	perLoad: readonly number[],
): Moments {
	const by = (one: number) => (one === 0 ? kit.mean : (perLoad[one - 1] as number));
	const start = round * ofRound;
	let pair = start + 2 * counted;
	let three = pair + (counted * (counted + 1)) / 2;
	let [mean, variance, third, withKits] = [0, 0, 0, 0];
	let most = (numbers[start] as number) * (kit.most - kit.mean);
	for (let one = 0; one < counted; one++) {
		const ofOne = by(one);
		most += ofOne * (numbers[start + one] as number);
		mean += ofOne * (numbers[start + counted + one] as number);
		for (let other = one; other < counted; other++) {
			const ofTwo = ofOne * by(other);
			const together = numbers[pair++] as number;
			variance += (one === other ? 1 : 2) * ofTwo * together;
			if (one === 0) withKits += by(other) * together;
			for (let last = other; last < counted; last++) {
				// In every order.
				const times = one === other ? (other === last ? 1 : 3) : other === last ? 3 : 6;
				third += times * ofTwo * by(last) * (numbers[three++] as number);
			}
		}
	}
	return {
		mean,
		variance: variance + kit.variance * number,
		third: third + 3 * kit.variance * withKits + kit.third * number,
		most,
	};
}

/** What a round uses once where there are any kits. */
function withRound(used: Moments, kits: number, perRound: number): Moments {
	if (perRound === 0) return used;
	const idle = Math.exp(-kits);
	const runs = -Math.expm1(-kits);
	const { mean, variance, third, most } = used;
	const uneven = 1 - 2 * runs;
	return {
		mean: mean + perRound * runs,
		variance: variance + 2 * perRound * mean * idle + perRound ** 2 * runs * idle,
		third:
			third +
			3 * perRound * idle * (variance - mean ** 2) +
			3 * perRound ** 2 * uneven * mean * idle +
			perRound ** 3 * runs * idle * uneven,
		most: most + (kits > 0 ? perRound : 0),
	};
}

/** As many kits hardly ever come: far beyond what `poisson` lists. */
function hardlyEver(mean: number): number {
	return mean === 0 ? 0 : Math.ceil(mean + 9 * Math.sqrt(mean) + 40);
}

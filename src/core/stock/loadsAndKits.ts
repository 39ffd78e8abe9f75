import { poissonTerms } from "../counts/poisson.ts";
import { memoizeByObject } from "../memoize.ts";
import type { Loads } from "../rounds/loads.ts";
import type { RoundsOfDay } from "../rounds/roundsOfDay.ts";
import { sumOfAll } from "../sumOfAll.ts";

/**
 * Of the kits of a round and the loads of each method that they make, in this order: what is hardly ever exceeded, the
 * means, and the second and third central moments of each two and three of them together, of which the first is no
 * later than the others. All in one list, round by round: so many lists would be much to keep.
 */
export interface LoadsAndKits {
	/** How many are counted: the kits, and the loads of each method. */
	readonly counted: number;
	/** How many numbers there are of each round. */
	readonly ofRound: number;
	readonly numbers: Float64Array;
}

/** Of the rounds of a day whose births are known: the same for all items, whatever they take. */
export const loadsAndKits = memoizeByObject(
	({ byKind, kits }: RoundsOfDay, loads: Loads): LoadsAndKits => {
		const sizes = sizesOf(loads);
		const counted = sizes.length;
		const [pairs, threes] = [
			(counted * (counted + 1)) / 2,
			(counted * (counted + 1) * (counted + 2)) / 6,
		];
		const ofRound = 2 * counted + pairs + threes;
		const numbers = new Float64Array(kits.length * ofRound);
		if (away.length < counted) away = new Float64Array(2 * counted);
		kits.forEach((_, round) => {
			const mean = sumOfAll(byKind.map((ofKind) => ofKind[round] as number));
			find(numbers, round * ofRound, mean, sizes);
		});
		return { counted, ofRound, numbers };
	},
);

const sizesOf = memoizeByObject((loads: Loads) =>
	Float64Array.of(1, ...loads.map(({ kits }) => kits)),
);

/** How far each of them is from its mean, in a list that is kept. */
let away = new Float64Array(16);

function find(numbers: Float64Array, start: number, mean: number, sizes: Float64Array): void {
	const { first, chance } = poissonTerms(mean);
	const counted = sizes.length;
	const means = start + counted;
	for (let one = 0; one < counted; one++) {
		const size = sizes[one] as number;
		numbers[start + one] = Math.ceil((first + chance.length - 1) / size);
		numbers[means + one] = meanOf(first, chance, size);
	}
	for (let i = 0; i < chance.length; i++) {
		for (let one = 0; one < counted; one++)
			away[one] =
				Math.ceil((first + i) / (sizes[one] as number)) - (numbers[means + one] as number);
		addTo(numbers, means + counted, counted, chance[i] as number);
	}
}

function meanOf(first: number, chance: Float64Array, size: number): number {
	let mean = 0;
	for (let i = 0; i < chance.length; i++)
		mean += (chance[i] as number) * Math.ceil((first + i) / size);
	return mean;
}

function addTo(numbers: Float64Array, from: number, counted: number, chance: number): void {
	let pair = from;
	let three = pair + (counted * (counted + 1)) / 2;
	for (let one = 0; one < counted; one++) {
		const ofOne = chance * (away[one] as number);
		for (let other = one; other < counted; other++) {
			const ofTwo = ofOne * (away[other] as number);
			numbers[pair] = (numbers[pair] as number) + ofTwo;
			pair++;
			for (let last = other; last < counted; last++) {
				numbers[three] = (numbers[three] as number) + ofTwo * (away[last] as number);
				three++;
			}
		}
	}
}

import type { Numbers } from "./mostNumbers.ts";

/**
 * The numbers of kits that are possible with each number of rounds and loads, which are a few
 * of all, so that only these are followed: one list after the other, by rounds and then loads.
 */
export interface SpansOfNumbers {
	readonly fewest: Int32Array;
	/** Below the fewest where none is possible. */
	readonly fullest: Int32Array;
	/** Where no kits would stand in what is followed. */
	readonly none: Int32Array;
	/** How many are followed in all. */
	readonly numbers: number;
}

export function spansOfNumbers(kitsInLoad: number, most: Numbers): SpansOfNumbers {
	const count = (most.rounds + 1) * (most.moreLoads + 1);
	const fewest = new Int32Array(count);
	const fullest = new Int32Array(count);
	const none = new Int32Array(count);
	let numbers = 0;
	for (let rounds = 0, span = 0; rounds <= most.rounds; rounds++)
		for (let moreLoads = 0; moreLoads <= most.moreLoads; moreLoads++, span++) {
			const [few, full] = kitsBetween(rounds, moreLoads, kitsInLoad, most);
			fewest[span] = few;
			fullest[span] = Math.min(full, most.kits);
			none[span] = numbers - few;
			numbers += Math.max(0, (fullest[span] as number) - few + 1);
		}
	return { fewest, fullest, none, numbers };
}

/** The fewest and the most kits that so many rounds and loads may have; any number where one of them is not followed. */
function kitsBetween(
	rounds: number,
	moreLoads: number,
	kitsInLoad: number,
	most: Numbers,
): [number, number] {
	if (most.kits === 0) return [0, 0];
	const loads = rounds + moreLoads;
	const fewest = most.rounds === 0 ? loads : rounds + kitsInLoad * moreLoads;
	return [fewest, most.moreLoads === 0 ? most.kits : kitsInLoad * loads];
}

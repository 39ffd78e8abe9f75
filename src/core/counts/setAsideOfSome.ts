import type { Counts } from "./counts.ts";

/**
 * What to set aside of a count that is known not to be 0: the smallest count from 1 on
 * whose cumulative chance, given that there is at least one, is at least `level`.
 *
 * A round that does not run needs nothing; counted with those, the rounds that do run
 * would be prepared for too little.
 *
 * @param level at least 0, below 1 − TAIL
 * @example setAsideOfSome(poisson(0.2), 0.95) // 2, where 1 is enough of all rounds
 */
export function setAsideOfSome({ first, chance }: Counts, level: number): number {
	const none = first === 0 ? (chance[0] as number) : 0;
	let some = 0;
	for (const p of chance) some += p;
	some -= none;
	let sum = 0;
	for (let i = first === 0 ? 1 : 0; i < chance.length; i++) {
		sum += chance[i] as number;
		if (sum >= level * some) return first + i;
	}
	return Math.max(1, first + chance.length - 1);
}

import { type Counts, setAside } from "./counts.ts";

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
	const least = Math.max(1, first);
	const some = chance.subarray(least - first);
	const all = some.reduce((sum, p) => sum + p, 0);
	return Math.max(least, setAside({ first: least, chance: some }, level * all));
}

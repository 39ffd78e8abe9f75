/**
 * How likely each whole number is (its probability mass function): `chance[i]` is the probability of `first + i`.
 *
 * The chances add up to 1 but for the tail that was cut off, which is below TAIL
 * on either side.
 */
export interface Counts {
	readonly first: number;
	readonly chance: Float64Array;
	/** Where it goes with a level that is not known: how likely each number is at each level. */
	readonly given?: GivenLevel;
}

/** A count of a forecast day at each level of births. */
export interface GivenLevel {
	/** What is not known of the day's births. */
	readonly level: LevelOfDay;
	/** Mean of what goes with the level. */
	readonly mean: number;
	/** Counts of one kind with the same text are alike at each level, however well it is known. */
	readonly alike: string;
	/** How likely each number is at a multiple of the level's mean. */
	readonly at: (factor: number) => Counts;
	/** Of a count that is Poisson at each level: its mean that does not go with the level. */
	readonly sure?: number;
}

/** Births of one forecast day: their mean, and what is not known of them. */
export interface LevelOfDay {
	readonly mean: number;
	/** Shape of its Gamma level. */
	readonly levelShape: number;
	/** 1 ÷ the size of a day's own variation; 0 where days are Poisson. */
	readonly daySpread: number;
}

/** Chances smaller than this, all together, are left out at either end. */
export const TAIL = 1e-13;

/** A count that is known (a point mass). */
export function always(value: number): Counts {
	return { first: value, chance: Float64Array.of(1) };
}

/** Something that happens or does not (Bernoulli): 1 with the chance given (0 to 1), else 0. */
export function once(chance: number): Counts {
	return { first: 0, chance: Float64Array.of(1 - chance, chance) };
}

/** The mean of a count. */
export function mean({ first, chance }: Counts): number {
	let sum = 0;
	for (let i = 0; i < chance.length; i++) sum += (chance[i] as number) * (first + i);
	return sum;
}

/** Chance (cumulative) that the count is at most `most`. */
export function chanceAtMost(counts: Counts, most: number): number {
	let sum = 0;
	const last = Math.min(most - counts.first, counts.chance.length - 1);
	for (let i = 0; i <= last; i++) sum += counts.chance[i] as number;
	return sum;
}

/**
 * What to set aside (the quantile): the smallest count whose cumulative chance is at least `level`.
 *
 * @param level at least 0, below 1 − TAIL
 */
export function setAside(counts: Counts, level: number): number {
	let sum = 0;
	for (let i = 0; i < counts.chance.length; i++) {
		sum += counts.chance[i] as number;
		if (sum >= level) return counts.first + i;
	}
	return counts.first + counts.chance.length - 1;
}

import type { Counts } from "./counts.ts";
import type { LevelNode } from "./laguerreNodes.ts";

/** A count's mean, its second and third central moments, and the most it can come to. */
export interface Moments {
	readonly mean: number;
	readonly variance: number;
	readonly third: number;
	readonly most: number;
}

/** The moments of a count. */
export function momentsOf({ first, chance }: Counts): Moments {
	let mean = 0;
	for (let i = 0; i < chance.length; i++) mean += (first + i) * (chance[i] as number);
	let variance = 0;
	let third = 0;
	for (let i = 0; i < chance.length; i++) {
		const away = first + i - mean;
		const square = away * away * (chance[i] as number);
		variance += square;
		third += square * away;
	}
	return { mean, variance, third, most: first + chance.length - 1 };
}

/** The moments of a sum of independent counts, each times an amount of its own; 1 where none is given. */
export function momentsOfSum(
	parts: readonly Moments[],
	amounts: readonly number[] | undefined,
): Moments {
	let mean = 0;
	let variance = 0;
	let third = 0;
	let most = 0;
	for (let i = 0; i < parts.length; i++) {
		const part = parts[i] as Moments;
		const amount = amounts?.[i] ?? 1;
		mean += part.mean * amount;
		variance += part.variance * amount ** 2;
		third += part.third * amount ** 3;
		most += part.most * amount;
	}
	return { mean, variance, third, most };
}

/** The moments of the same amounts, counted by so many at a time. */
export function momentsIn(grain: number, { mean, variance, third, most }: Moments): Moments {
	return {
		mean: mean / grain,
		variance: variance / grain ** 2,
		third: third / grain ** 3,
		most: most / grain,
	};
}

/** The moments of a count whose moments depend on an uncertain level. */
export function mixedMoments(
	nodes: readonly LevelNode[],
	momentsAt: (factor: number) => Moments,
): Moments {
	const parts = nodes.map(({ factor, weight }) => ({ ...momentsAt(factor), weight }));
	const mean = parts.reduce((sum, part) => sum + part.weight * part.mean, 0);
	let variance = 0;
	let third = 0;
	for (const part of parts) {
		const away = part.mean - mean;
		variance += part.weight * (part.variance + away ** 2);
		third += part.weight * (part.third + 3 * away * part.variance + away ** 3);
	}
	return { mean, variance, third, most: Math.max(...parts.map((part) => part.most)) };
}

import { memoize } from "../memoize.ts";
import { type LevelNode, laguerreNodes } from "./laguerreNodes.ts";

/** One node: the mean itself. */
const known: readonly LevelNode[] = [{ factor: 1, weight: 1 }];

/** Level variance below this part of the Poisson variance moves no quantile by 1 in 100. */
const WELL_KNOWN = 0.01;
/** As many as are ever worth their time: for a level up to so much more varied than the counts. */
const MOST_NODES = 27;
export const MOST_VARIANCE = 14;

const found = memoize(laguerreNodes);

/**
 * Values and weights over which what depends on an uncertain level is mixed.
 *
 * As many as bring every quantile from 0.5 to 0.995 within 1 in 100 of the exact one:
 * 2 + 1.8·(mean ÷ shape), the level's variance beside that of the counts; found by
 * comparison with negative binomial counts, tests/reference/levelNodes.test.ts.
 *
 * @param shape A of the Gamma(A, A) level; Infinity where it is known
 * @param meanCount mean of what is counted, 0 or more
 */
export function levelNodes(shape: number, meanCount: number): readonly LevelNode[] {
	const variance = meanCount / shape;
	if (!(variance >= WELL_KNOWN)) return known;
	return found(shape, Math.min(MOST_NODES, Math.ceil(2 + 1.8 * variance)));
}

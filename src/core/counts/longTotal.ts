import { memoize } from "../memoize.ts";
import { type Counts, TAIL } from "./counts.ts";
import { laguerreNodes } from "./laguerreNodes.ts";
import { mixedOver } from "./mixedOver.ts";
import { type Moments, mixedMoments, momentsIn } from "./moments.ts";
import { momentsBetween } from "./momentsBetween.ts";
import { shiftedGamma } from "./shiftedGamma.ts";
import { spread } from "./spread.ts";

/** Enough for the first three moments of what bends little over the part of the level that is smoothed. */
const NODES_OF_MOMENTS = 3;
/** From this shape on the level is even enough for the moments of the whole. */
const EVEN_SHAPE = 25;
const NODES_OF_TOTAL = 56;
/** Less than one in so many of the total's spread is not told apart: hundreds of thousands of numbers would be. */
const PARTS_OF_SPREAD = 1000;

const nodesOf = memoize(laguerreNodes);

/**
 * A total at an uncertain level, by its mean, variance and skewness at each value of the level.
 *
 * Where its spread is far more than a thousand, so many numbers at a time are counted together
 * that a thousandth of it is told apart.
 *
 * @param shape of the Gamma level
 * @param most totals beyond it are left out
 */
export function longTotal(
	shape: number,
	momentsAt: (factor: number) => Moments,
	most: number,
): Counts {
	const { mean, variance } = momentsAt(1);
	const grain = Math.floor(Math.sqrt(variance + mean ** 2 / shape) / PARTS_OF_SPREAD);
	if (grain <= 1) return overLevel(shape, momentsAt, most);
	const inGrains = (factor: number) => momentsIn(grain, momentsAt(factor));
	return spread(overLevel(shape, inGrains, Math.floor(most / grain)), (count) => count * grain);
}

/**
 * The level is taken as a product: a Gamma nearly as wide, mixed node by node, and a
 * narrow one, which with the days' own chance enters each node's mean, variance and
 * skewness, so that no steps are left between the nodes.
 */
function overLevel(shape: number, momentsAt: (factor: number) => Moments, most: number): Counts {
	const smoothed = (at: number, narrow: number, moments: (factor: number) => Moments) =>
		shiftedGamma(
			mixedMoments(nodesOf(narrow, NODES_OF_MOMENTS), (factor) => moments(at * factor)),
			most,
		);
	if (shape >= EVEN_SHAPE) return smoothed(1, shape, momentsAt);
	// About as wide as half the distance between the nodes where quantiles are asked.
	const narrow = 0.18 * NODES_OF_TOTAL * (shape + 2.5 * Math.sqrt(shape) + 1.5);
	const wide = (1 + 1 / narrow) / (1 / shape - 1 / narrow);
	const nodes = nodesOf(wide, NODES_OF_TOTAL).filter(({ weight }) => weight > TAIL);
	const furthest = (nodes.at(-1)?.factor as number) * (1 + 6 / Math.sqrt(narrow));
	const between = momentsBetween(momentsAt, furthest);
	return mixedOver(nodes, (factor) => smoothed(factor, narrow, between));
}

import type { Counts } from "./counts.ts";
import { laguerreNodes } from "./laguerreNodes.ts";
import { levelNodes } from "./levelNodes.ts";
import { mixedOver } from "./mixedOver.ts";
import { type Moments, mixedMoments, momentsOf, momentsOfSum } from "./moments.ts";
import { shiftedGamma } from "./shiftedGamma.ts";
import { sumOf } from "./sumOf.ts";

/** Up to so many days a total at an uncertain level is added up exactly at every node. */
const DAYS_ADDED_EXACTLY = 31;
/** Enough for the first three moments of what bends little over the part of the level that is smoothed. */
const NODES_OF_MOMENTS = 3;
/** From this shape on the level is even enough for the moments of the whole. */
const EVEN_SHAPE = 25;
const NODES_OF_TOTAL = 56;

/** How uncertain the level behind a count is: a Gamma(shape, shape) multiplier of its mean. */
export interface SharedLevel {
	readonly shape: number;
	/** Mean of what is counted and goes with the level. */
	readonly mean: number;
}

/**
 * Total of days that share an uncertain level and are independent given it.
 *
 * Where the level is well known, the days added up exactly. Else mixed over the level's
 * nodes; for more than a month by its mean, variance and skewness alone, within 1 in
 * 100 of the exact mixture (tests/reference/longTotals.test.ts).
 *
 * @param days what each day goes by; equal objects are worked out once
 * @param countsAt how likely each number is for a day at a multiple of the level's mean
 */
export function sumAtLevel<D extends object>(
	days: readonly D[],
	{ shape, mean }: SharedLevel,
	countsAt: (day: D, factor: number) => Counts,
): Counts {
	const times = new Map<D, number>();
	for (const day of days) times.set(day, (times.get(day) ?? 0) + 1);
	const nodes = levelNodes(shape, mean);
	if (nodes.length === 1 || days.length <= DAYS_ADDED_EXACTLY)
		return mixedOver(nodes, (factor) => {
			const counts = new Map([...times.keys()].map((day) => [day, countsAt(day, factor)]));
			return sumOf(days.map((day) => counts.get(day) as Counts));
		});
	return longTotal(shape, (factor) =>
		momentsOfSum([...times].map(([day, count]) => [momentsOf(countsAt(day, factor)), count])),
	);
}

/**
 * The level is taken as a product: a Gamma nearly as wide, mixed node by node, and a
 * narrow one, which with the days' own chance enters each node's mean, variance and
 * skewness, so that no steps are left between the nodes.
 */
function longTotal(shape: number, momentsAt: (factor: number) => Moments): Counts {
	const smoothed = (at: number, narrow: number) =>
		shiftedGamma(
			mixedMoments(laguerreNodes(narrow, NODES_OF_MOMENTS), (factor) => momentsAt(at * factor)),
		);
	if (shape >= EVEN_SHAPE) return smoothed(1, shape);
	// About as wide as half the distance between the nodes where quantiles are asked.
	const narrow = 0.18 * NODES_OF_TOTAL * (shape + 2.5 * Math.sqrt(shape) + 1.5);
	const wide = (1 + 1 / narrow) / (1 / shape - 1 / narrow);
	return mixedOver(laguerreNodes(wide, NODES_OF_TOTAL), (factor) => smoothed(factor, narrow));
}

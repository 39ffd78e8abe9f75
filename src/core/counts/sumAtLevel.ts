import { Grouped } from "../grouped.ts";
import { always, type Counts, type GivenLevel, TAIL } from "./counts.ts";
import { laguerreNodes } from "./laguerreNodes.ts";
import { levelNodes, MOST_VARIANCE } from "./levelNodes.ts";
import { mixedOver } from "./mixedOver.ts";
import { type Moments, mixedMoments, momentsOf, momentsOfSum } from "./moments.ts";
import { momentsBetween } from "./momentsBetween.ts";
import { shiftedGamma } from "./shiftedGamma.ts";
import { spanShape } from "./spanShape.ts";
import { spread } from "./spread.ts";
import { plus, sumOf } from "./sumOf.ts";

/** Up to so many days a total at an uncertain level is added up exactly at every node. */
export const DAYS_ADDED_EXACTLY = 31;
/** Enough for the first three moments of what bends little over the part of the level that is smoothed. */
const NODES_OF_MOMENTS = 3;
/** From this shape on the level is even enough for the moments of the whole. */
const EVEN_SHAPE = 25;
const NODES_OF_TOTAL = 56;

/** A day whose count is known, or known at each level; its moments alone may be found sooner. */
type CountOfDay =
	| Counts
	| { readonly given: GivenLevel; readonly momentsAt?: (factor: number) => Moments };

/**
 * Total of days that are independent but for the level that they share.
 *
 * Where no level is unknown, or it is known well, the days added up exactly. Else mixed
 * over the level's nodes; for more than a month, or a level far wider than the
 * days' own chance, by its mean, variance and skewness at
 * them, within 1 in 100 of the exact mixture (tests/reference/longTotals.test.ts). Days
 * with no level of their own are added as they are.
 *
 * @param days in order of time; days alike are worked out once
 * @param amounts of each day, by which its count goes; 1 where not given
 * @param most totals beyond it may be left out
 */
export function sumAtLevel(
	days: readonly CountOfDay[],
	amounts?: readonly number[],
	most = Number.POSITIVE_INFINITY,
): Counts {
	const levels = days.flatMap(({ given }) => (given ? [given] : []));
	if (levels.length === 0) return amountsAdded(days as readonly Counts[], amounts, most);
	const shape = spanShape(levels.map(({ level }) => level));
	const mean = levels.reduce((sum, given) => sum + given.mean, 0);
	const nodes = levelNodes(shape, mean);
	const [kinds, kindOf] = alikeDays(days);
	if (nodes.length === 1 || (days.length <= DAYS_ADDED_EXACTLY && mean / shape <= MOST_VARIANCE))
		return mixedOver(nodes, (factor) => {
			const counts = kinds.map((day) => at(day, factor));
			return amountsAdded(
				kindOf.map((kind) => counts[kind] as Counts),
				amounts,
				most,
			);
		});
	return longTotal(shape, (factor) => {
		const moments = kinds.map((day) => momentsAt(day, factor));
		return momentsOfSum(
			kindOf.map((kind) => moments[kind] as Moments),
			amounts,
		);
	});
}

/** One day of each kind, and which kind each day is: most days of a long plan are alike at one level. */
function alikeDays(days: readonly CountOfDay[]): [CountOfDay[], number[]] {
	const kinds: CountOfDay[] = [];
	const known = new Map<unknown, number>();
	const kindOf = days.map((day) => {
		const key = day.given?.alike ?? day;
		const kind = known.get(key) ?? kinds.push(day) - 1;
		known.set(key, kind);
		return kind;
	});
	return [kinds, kindOf];
}

/** Known days added up, those of one amount together: each has chances only at its multiples. */
function amountsAdded(
	days: readonly Counts[],
	amounts: readonly number[] | undefined,
	most: number,
): Counts {
	if (!amounts) return sumOf(days, most);
	const byAmount = new Grouped<number, Counts>();
	days.forEach((counts, day) => {
		byAmount.add(amounts[day] as number, counts);
	});
	return [...new Set(amounts)]
		.map((amount) => spread(sumOf(byAmount.of(amount)), (count) => count * amount, most))
		.reduce((added, part) => plus(part, added, most), always(0));
}

function at(day: CountOfDay, factor: number): Counts {
	return "first" in day && !day.given ? day : (day.given as GivenLevel).at(factor);
}

function momentsAt(day: CountOfDay, factor: number): Moments {
	return "momentsAt" in day && day.momentsAt ? day.momentsAt(factor) : momentsOf(at(day, factor));
}

/**
 * The level is taken as a product: a Gamma nearly as wide, mixed node by node, and a
 * narrow one, which with the days' own chance enters each node's mean, variance and
 * skewness, so that no steps are left between the nodes.
 */
function longTotal(shape: number, momentsAt: (factor: number) => Moments): Counts {
	const smoothed = (at: number, narrow: number, moments: (factor: number) => Moments) =>
		shiftedGamma(
			mixedMoments(laguerreNodes(narrow, NODES_OF_MOMENTS), (factor) => moments(at * factor)),
		);
	if (shape >= EVEN_SHAPE) return smoothed(1, shape, momentsAt);
	// About as wide as half the distance between the nodes where quantiles are asked.
	const narrow = 0.18 * NODES_OF_TOTAL * (shape + 2.5 * Math.sqrt(shape) + 1.5);
	const wide = (1 + 1 / narrow) / (1 / shape - 1 / narrow);
	const nodes = laguerreNodes(wide, NODES_OF_TOTAL).filter(({ weight }) => weight > TAIL);
	const furthest = (nodes.at(-1)?.factor as number) * (1 + 6 / Math.sqrt(narrow));
	const between = momentsBetween(momentsAt, furthest);
	return mixedOver(nodes, (factor) => smoothed(factor, narrow, between));
}

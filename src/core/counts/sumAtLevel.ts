import { Grouped } from "../grouped.ts";
import { always, type Counts, type GivenLevel, type LevelOfDay } from "./counts.ts";
import { delaporte } from "./delaporte.ts";
import type { LevelNode } from "./laguerreNodes.ts";
import { levelNodes, MOST_VARIANCE } from "./levelNodes.ts";
import { longTotal } from "./longTotal.ts";
import { mixedOver } from "./mixedOver.ts";
import { type Moments, momentsOf, momentsOfSum } from "./moments.ts";
import { spanShape } from "./spanShape.ts";
import { spread } from "./spread.ts";
import { plus, sumOf } from "./sumOf.ts";

/** Up to so many days a total at an uncertain level is added up exactly at every node. */
export const DAYS_ADDED_EXACTLY = 31;

/** More than so many are not told apart one by one: far above the mean there may be millions. */
const MOST_COUNTED = 10_000;

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
	const ofDays = levels.map(({ level }) => level);
	const shape = spanShape(ofDays);
	const mean = levels.reduce((sum, given) => sum + given.mean, 0);
	const [amount = 1] = amounts ?? [];
	const isOfOne = !amounts?.some((each) => each !== amount);
	if (isOfOne && mean <= MOST_COUNTED && levels.every(({ sure }) => sure !== undefined)) {
		const sure = levels.reduce((sum, given) => sum + (given.sure as number), 0);
		const known = (days as readonly Counts[]).filter(({ given }) => !given);
		const parts = [...known, delaporte(sure, shape, mean)];
		const total = sumOf(parts, Math.floor(most / amount));
		return amount === 1 ? total : spread(total, (count) => count * amount, most);
	}
	const nodes = nodesOfSum(ofDays, mean, days.length);
	const [kinds, kindOf] = alikeDays(days);
	if (nodes)
		return mixedOver(nodes, (factor) => {
			const counts = kinds.map((day) => at(day, factor));
			return amountsAdded(
				kindOf.map((kind) => counts[kind] as Counts),
				amounts,
				most,
			);
		});
	const moments = (factor: number) => {
		const each = kinds.map((day) => momentsAt(day, factor));
		return momentsOfSum(
			kindOf.map((kind) => each[kind] as Moments),
			amounts,
		);
	};
	return longTotal(shape, moments, most);
}

/**
 * The nodes at which days that share a level are added up exactly; undefined where their total is found by its moments.
 *
 * @param mean of what goes with the level
 * @param days all of them
 */
export function nodesOfSum(
	levels: readonly LevelOfDay[],
	mean: number,
	days: number,
): readonly LevelNode[] | undefined {
	const shape = spanShape(levels);
	const nodes = levelNodes(shape, mean);
	const isExact = days <= DAYS_ADDED_EXACTLY && mean / shape <= MOST_VARIANCE;
	return nodes.length === 1 || isExact ? nodes : undefined;
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

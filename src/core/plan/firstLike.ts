import type { Figure } from "../calculation.ts";
import { memoize } from "../memoize.ts";
import { valueIn } from "../outcome.ts";
import type { DayFigures } from "./dayFigures.ts";

/**
 * For each day the first that is alike in all that its cells follow from, itself where
 * none is: where every cell of that one has an answer, so has every cell of this one.
 * A day that has no value somewhere has reasons of its own, and is like no other.
 */
export function firstLike(days: readonly DayFigures[]): (day: number) => number {
	return memoize(
		(day: number) => day,
		(day) => followedFrom(days[day] as DayFigures),
		Number.POSITIVE_INFINITY,
	);
}

/** Values of a day; the rest is the unit's, the same on every day. */
function followedFrom({ births, level, kinds, rounds, preparation, date }: DayFigures): unknown[] {
	const figures: Figure<unknown>[] = [
		births,
		rounds,
		...kinds.flatMap(({ uses, expiries, toReprocess }) => [uses, expiries, toReprocess]),
	];
	const values = figures.map(valueIn);
	const mixed = valueIn(preparation);
	if (!mixed || values.includes(undefined)) return [date];
	return [level && valueIn(level), ...values, ...Object.values(mixed)];
}

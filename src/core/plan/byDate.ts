import { allOf, type Figure, listOf } from "../calculation.ts";
import { MOST_OBJECTS, memoize } from "../memoize.ts";
import type { RoundsOfDay } from "../rounds/roundsOfDay.ts";
import { say } from "../say.ts";
import type { IsoDate } from "../values/date.ts";

interface Day {
	readonly date: IsoDate;
}

/** One figure of each day as a list, each under its day's date. */
export function byDate<D extends Day, T>(
	label: string,
	unit: string,
	days: readonly D[],
	of: (day: D) => Figure<T>,
): Figure<T[]> {
	const figures = days.map(of);
	return listOf(label, unit, allOf(figures), () =>
		Object.fromEntries(days.map(({ date }, i) => [date, figures[i] as Figure<T>])),
	);
}

/** The rounds of some days: one list for all weeks whose days are alike, so that what follows from it is worked out once. */
export function roundsByDate(
	days: readonly (Day & { readonly rounds: Figure<RoundsOfDay> })[],
): Figure<RoundsOfDay[]> {
	const rounds = byDate(say`Kits in each round, average`, say`kits`, days, (day) => day.rounds);
	const { outcome } = rounds;
	return outcome.ok
		? { ...rounds, outcome: { ...outcome, value: oneList(outcome.value) } }
		: rounds;
}

const oneList = memoize(
	(rounds: RoundsOfDay[]) => rounds,
	(rounds) => rounds,
	MOST_OBJECTS,
);

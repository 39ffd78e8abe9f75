import { memoizeByObject } from "../memoize.ts";
import type { PlanMeasure, PlanMeasures } from "./planMeasures.ts";

/** What a column of day-plan.csv says of a measure, and how its key ends. */
const endings = { expected: "expected", setAside: "set_aside" } as const;
export type Part = keyof typeof endings;

type Stem<K, M> = M extends { readonly stem: infer S extends string } ? S : K & string;
type PartOf<M> = { [P in Part]: M extends Readonly<Record<P, object>> ? P : never }[Part];
type KeyOf<K, M> = `${Stem<K, M>}_${(typeof endings)[PartOf<M>]}`;
/** The keys of the columns that some measures have. */
type ColumnKeys<M extends PlanMeasures> = { [K in keyof M]: KeyOf<K, M[K]> }[keyof M];

/** The key of a measure's column in day-plan.csv. @example columnKey("births", planMeasures.births, "setAside") // "births_set_aside" */
export function columnKey(key: string, { stem = key }: PlanMeasure, part: Part): string {
	return `${stem}_${endings[part]}`;
}

/** One of something for each column of day-plan.csv that these measures have, under the column's key. */
export function byColumn<M extends PlanMeasures, T>(
	measures: M,
	of: (key: keyof M & string, part: Part) => T,
): Readonly<Record<ColumnKeys<M>, T>> {
	const made: Record<string, T> = {};
	for (const { column, key, part } of columnsOf(measures)) made[column] = of(key, part);
	return made as Record<ColumnKeys<M>, T>;
}

/** The same for every day of a plan. */
const columnsOf = memoizeByObject((measures: PlanMeasures) =>
	Object.entries(measures).flatMap(([key, measure]) =>
		(Object.keys(endings) as Part[])
			.filter((part) => measure[part])
			.map((part) => ({ column: columnKey(key, measure, part), key, part })),
	),
);

import { type Figure, nameFigure } from "../calculation.ts";
import type { ComputedRow, ComputedTable } from "../computedTable.ts";
import type { RowOf } from "../sheet.ts";
import { unitsMonthSheet } from "../sheets/unitsMonth.ts";
import type { unitsTrendSheet } from "../sheets/unitsTrend.ts";
import { inOrder } from "../values/inOrder.ts";

/** One unit's month of one measure. */
export type TrendRow = Omit<RowOf<typeof unitsTrendSheet>, "unit" | "path">;

interface Sum {
	readonly month: string;
	readonly measure: string;
	readonly measureUnit: string;
	planned: number;
	expected: number;
	setAside: number | null;
	recorded: number;
	done: number;
	both: number;
	change: number;
}

const { columns } = unitsMonthSheet;

/** The months of all units added up, one row a month and measure, however many the units. */
export class MonthSums {
	readonly #sums = new Map<string, Sum>();

	/** The months of one unit, which counts once in a sum, also where it has two names for an item. */
	add(rows: readonly TrendRow[]): void {
		const counted = { planned: new Set<Sum>(), recorded: new Set<Sum>(), both: new Set<Sum>() };
		for (const row of rows) {
			const { month, measure, measure_unit: measureUnit } = row;
			const key = JSON.stringify([month, measure, measureUnit]);
			const sum = this.#sums.get(key) ?? {
				...{ month, measure, measureUnit },
				...{ planned: 0, expected: 0, setAside: null },
				...{ recorded: 0, done: 0, both: 0, change: 0 },
			};
			this.#sums.set(key, sum);
			if (row.planned_expected !== null) {
				counted.planned.add(sum);
				sum.expected += row.planned_expected;
			}
			if (row.planned_set_aside !== null)
				sum.setAside = (sum.setAside ?? 0) + row.planned_set_aside;
			if (row.done !== null) {
				counted.recorded.add(sum);
				sum.done += row.done;
			}
			if (row.change !== null) {
				counted.both.add(sum);
				sum.change += row.change;
			}
		}
		for (const sum of counted.planned) sum.planned++;
		for (const sum of counted.recorded) sum.recorded++;
		for (const sum of counted.both) sum.both++;
	}

	/** Month by month, the measures in the order in which units first named them. */
	table(): ComputedTable<typeof unitsMonthSheet> {
		const sums = [...this.#sums.values()].sort((a, b) => inOrder(a.month, b.month));
		return { sheet: unitsMonthSheet, rows: sums.map(rowOf) };
	}
}

function rowOf(sum: Sum): ComputedRow<typeof unitsMonthSheet> {
	const named = <T>(key: keyof typeof columns, value: T): Figure<T> =>
		nameFigure(columns[key].label, value);
	const of = (key: keyof typeof columns, count: number, value: number) =>
		named(key, count === 0 ? null : value);
	return {
		month: named("month", sum.month),
		measure: named("measure", sum.measure),
		measure_unit: named("measure_unit", sum.measureUnit),
		units_planned: named("units_planned", sum.planned),
		planned_expected: of("planned_expected", sum.planned, sum.expected),
		planned_set_aside: named("planned_set_aside", sum.setAside),
		units_done: named("units_done", sum.recorded),
		done: of("done", sum.recorded, sum.done),
		units_both: named("units_both", sum.both),
		change: of("change", sum.both, sum.change),
	};
}

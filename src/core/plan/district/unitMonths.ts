import { calculation, derive, type Figure, nameFigure } from "../../calculation.ts";
import type { ComputedRow } from "../../computedTable.ts";
import { valueIn } from "../../outcome.ts";
import type { ReadWorkbook } from "../../read/readWorkbook.ts";
import { say } from "../../say.ts";
import { monthMeasures, type monthSheet } from "../../sheets/month.ts";
import { unitsTrendSheet } from "../../sheets/unitsTrend.ts";
import { definition } from "../../source.ts";
import { daysOfMonth, type IsoMonth, monthBefore, monthOf } from "../../values/isoMonth.ts";
import { spanTable } from "../record/monthTable.ts";
import { recordedDays } from "../record/recordedDays.ts";
import type { Whose } from "./unitLine.ts";

type Row = ComputedRow<typeof unitsTrendSheet>;
type MonthRow = ComputedRow<typeof monthSheet>;

/** A year of months: more would be another question than how a unit is doing. */
export const MOST_MONTHS = 12;

const { columns } = unitsTrendSheet;

export const fromMonthBefore = calculation<{ now: number; before: number }, number>({
	key: "from_month_before",
	label: columns.change.label,
	unit: columns.change.unit,
	formula: say`Done in the month − done in the month before.`,
	source: definition,
	inputs: {
		now: { label: say`Done`, unit: columns.done.unit },
		before: { label: say`Done in the month before`, unit: columns.done.unit },
	},
	example: { inputs: { now: 150, before: 160 }, result: -10, within: 0 },
	compute: ({ now, before }) => now - before,
});

/**
 * What a unit planned and did in each of its last months, of which anything is written down.
 *
 * @param nameOf an item's name in the district
 */
export function unitMonths(
	{ unit, path }: Whose,
	read: ReadWorkbook,
	nameOf: (item: string) => string = (item) => item,
): Row[] {
	const rows: Row[] = [];
	const done = new Map<string, Figure>();
	for (const month of monthsOf(read))
		for (const [at, row] of spanTable(read, daysOfMonth(month)).rows.entries()) {
			if (isBlank(row)) continue;
			const own = valueIn(row.measure) ?? "";
			const measure = at < monthMeasures.length ? own : nameOf(own);
			const key = (of: IsoMonth) => `${of} ${at}`;
			const before = done.get(key(monthBefore(month)));
			if (isNumber(row.done)) done.set(key(month), row.done);
			rows.push({
				unit: nameFigure(columns.unit.label, unit),
				path: nameFigure(columns.path.label, path),
				month: nameFigure(columns.month.label, month),
				measure: nameFigure(columns.measure.label, measure),
				measure_unit: row.unit,
				planned_expected: row.planned_expected,
				planned_set_aside: row.planned_set_aside,
				done: row.done,
				change:
					before && isNumber(row.done)
						? derive(fromMonthBefore, { now: row.done, before })
						: nameFigure(columns.change.label, null),
			});
		}
	return rows;
}

function isNumber(figure: Figure<number | null>): figure is Figure<number> {
	return typeof valueIn(figure) === "number";
}

function isBlank({ planned_expected, planned_set_aside, done }: MonthRow): boolean {
	return ![planned_expected, planned_set_aside, done].some(isNumber);
}

/** The last months of which something is written down, the earliest first. */
function monthsOf({ tables }: ReadWorkbook): IsoMonth[] {
	const planned = tables.pastPlans.rows.map(({ value }) => value.date);
	const days = [...recordedDays(tables), ...planned];
	return [...new Set(days.map(monthOf))].sort().slice(-MOST_MONTHS);
}

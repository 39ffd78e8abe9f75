import type { Figure } from "../../../core/calculation.ts";
import type { ComputedRow } from "../../../core/computedTable.ts";
import type { DayColumn } from "../../../core/sheets/dayPlan.ts";
import { weekPlanSheet } from "../../../core/sheets/weekPlan.ts";

export type WeekRow = ComputedRow<typeof weekPlanSheet>;

/** What a week brings in a column of its days; undefined where days do not add up. */
export function weekFigure(
	row: WeekRow | undefined,
	column: DayColumn | undefined,
): Figure<number | null> | undefined {
	return column !== undefined && isOfWeek(column) ? row?.[column] : undefined;
}

function isOfWeek(column: DayColumn): column is Extract<DayColumn, keyof WeekRow> {
	return Object.hasOwn(weekPlanSheet.columns, column);
}

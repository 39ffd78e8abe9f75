import { type Figure, refusedFigure, typedFigure } from "../calculation.ts";
import { firstReasons } from "../outcome.ts";
import type { GoodRow, ReadTable } from "./goodRow.ts";
import { unsettlesRows } from "./unsettlesRows.ts";

/**
 * A sheet used as a whole, as one figure.
 *
 * A single bad row leaves the list without a value: working on with the rest
 * would silently plan for fewer rounds, steps or kits than the unit has.
 */
export function listFigure<R, T>(
	label: string,
	unit: string,
	table: ReadTable<R>,
	value: (rows: readonly GoodRow<R>[]) => T,
): Figure<T> {
	const place = { file: table.file, line: null, column: "" };
	const bad = [
		...table.problems.filter(unsettlesRows),
		...table.badRows.flatMap((row) => row.problems),
	];
	if (bad.length > 0) return refusedFigure(label, unit, place, ...firstReasons(bad));
	return typedFigure(label, unit, value(table.rows), place);
}

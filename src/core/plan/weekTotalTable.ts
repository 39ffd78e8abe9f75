import { nameFigure } from "../calculation.ts";
import type { ComputedTable } from "../computedTable.ts";
import { say } from "../say.ts";
import { type Measure, measures, planMeasures } from "../sheets/planMeasures.ts";
import { weekTotalSheet } from "../sheets/weekTotal.ts";
import type { Pair } from "./countFigures.ts";
import type { DayFigures } from "./dayFigures.ts";

/** One row a measure, over the whole plan. */
export function weekTotalTable(
	days: readonly DayFigures[],
	period: Record<Measure, Pair>,
): ComputedTable<typeof weekTotalSheet> {
	const { outcome } = (days[0] as DayFigures).preparation;
	const productUnit = outcome.ok ? outcome.value.measure : "";
	const rows = measures.map((measure) => ({
		measure_of: nameFigure(say`Total of`, measure),
		expected: period[measure].expected,
		set_aside: period[measure].setAside,
		unit: nameFigure(say`Unit`, planMeasures[measure].unit || productUnit),
	}));
	return { sheet: weekTotalSheet, rows };
}

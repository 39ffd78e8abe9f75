import { type Figure, nameFigure } from "../calculation.ts";
import { type ComputedTable, onDemand } from "../computedTable.ts";
import { rowOnDemand } from "../rowOnDemand.ts";
import { say } from "../say.ts";
import { byColumn, type Part } from "../sheets/columnKey.ts";
import {
	kitMeasures,
	type Measure,
	solutionMeasures,
	supplyMeasures,
} from "../sheets/planMeasures.ts";
import { weekPlanSheet } from "../sheets/weekPlan.ts";
import { DAYS_PER_WEEK } from "../values/date.ts";
import { countsOfPeriod } from "./countsOfPeriod.ts";
import type { DayFigures } from "./dayFigures.ts";
import { measureFigures } from "./measureFigures.ts";
import type { UnitFigures } from "./unitFigures.ts";
import { boiledLoads } from "./water/boiledLoads.ts";

/** One row a week, from the first day of the plan on. */
export function weekPlanTable(
	unit: UnitFigures,
	litres: Figure,
	days: readonly DayFigures[],
): ComputedTable<typeof weekPlanSheet> {
	return onDemand(weekPlanSheet, () => {
		const count = Math.ceil(days.length / DAYS_PER_WEEK);
		return Array.from({ length: count }, (_, at) => {
			const week = days.slice(at * DAYS_PER_WEEK, (at + 1) * DAYS_PER_WEEK);
			return rowOnDemand(weekPlanSheet, () => rowOf(unit, litres, week));
		});
	});
}

function rowOf(unit: UnitFigures, litres: Figure, week: readonly DayFigures[]) {
	const [first, last] = [week[0], week.at(-1)] as [DayFigures, DayFigures];
	const counts = countsOfPeriod(unit, week);
	const figures = measureFigures(unit, litres, counts, boiledLoads(unit, week).inPeriod(counts));
	const cellOf = (measure: Measure, part: Part) => figures[measure][part];
	const { outcome } = first.preparation;
	return {
		from: nameFigure(say`From`, first.date),
		to: nameFigure(say`To`, last.date),
		...byColumn(kitMeasures, cellOf),
		...byColumn(solutionMeasures, cellOf),
		product_unit: nameFigure(say`Product in`, outcome.ok ? outcome.value.measure : ""),
		...byColumn(supplyMeasures, cellOf),
	};
}

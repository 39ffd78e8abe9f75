import { type Figure, nameFigure } from "../calculation.ts";
import type { ComputedRow, ComputedTable } from "../computedTable.ts";
import { withCellsOnDemand } from "../rowOnDemand.ts";
import { say } from "../say.ts";
import { byColumn, type Part } from "../sheets/columnKey.ts";
import { dayPlanSheet } from "../sheets/dayPlan.ts";
import {
	kitMeasures,
	type Measure,
	solutionMeasures,
	supplyMeasures,
} from "../sheets/planMeasures.ts";
import { isMixed } from "./chlorine/litresOfPreparation.ts";
import type { Pair } from "./countFigures.ts";
import type { DayFigures } from "./dayFigures.ts";
import type { CoverFigures } from "./kits/coverFigures.ts";
import type { UnitFigures } from "./unitFigures.ts";

type Row = ComputedRow<typeof dayPlanSheet>;

/** What is worked out of a day when somebody looks at it. */
const columns = Object.keys(dayPlanSheet.columns).filter((key) => key !== "date") as Exclude<
	keyof Row,
	"date"
>[];

/** One row a day. */
export function dayPlanTable(
	unit: UnitFigures,
	cover: CoverFigures,
	days: readonly { readonly day: DayFigures; readonly measures: Record<Measure, Pair> }[],
): ComputedTable<typeof dayPlanSheet> {
	const rows = days.map((planned) =>
		withCellsOnDemand(
			{ date: nameFigure(say`Date`, planned.day.date) },
			columns,
			(): Omit<Row, "date"> => {
				const { measures } = planned;
				const cellOf = (measure: Measure, part: Part) => measures[measure][part];
				return {
					...byColumn(kitMeasures, cellOf),
					kits_needed: cover.kitsNeeded,
					kits_in_service: unit.kitsInService,
					...byColumn(solutionMeasures, cellOf),
					chlorine_product: productName(unit),
					...byColumn(supplyMeasures, cellOf),
				};
			},
		),
	);
	return { sheet: dayPlanSheet, rows };
}

/** Blank where rounds mix no solution. */
function productName({ productInUse, read }: UnitFigures): Figure<string> {
	if (!isMixed(read)) return nameFigure(say`Product in use`, "");
	return "row" in productInUse ? productInUse.name : productInUse;
}

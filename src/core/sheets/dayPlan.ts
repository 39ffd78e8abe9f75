import { computed } from "../column.ts";
import { say } from "../say.ts";
import { sheet } from "../sheet.ts";
import { columnKey, type Part } from "./columnKey.ts";
import { day, wholeAmount } from "./computedValues.ts";
import { measureColumns } from "./measureColumns.ts";
import {
	kitMeasures,
	type Measure,
	planMeasures,
	solutionMeasures,
	supplyMeasures,
} from "./planMeasures.ts";
import { textColumn } from "./textColumn.ts";

/** One row a day. What is set aside for the whole period is in week-total.csv. */
export const dayPlanSheet = sheet({
	file: "day-plan.csv",
	title: say`The plan, day by day`,
	about: say`What each day brings on average, and what to prepare for.`,
	columns: {
		date: computed({ label: say`Date`, unit: "", value: day(), help: say`The day.` }),
		...measureColumns(kitMeasures),
		kits_needed: computed({
			label: say`Kits needed`,
			unit: say`kits`,
			value: wholeAmount(),
			decimals: 0,
			help: say`Kits the unit must own so that one is ready.`,
		}),
		kits_in_service: computed({
			label: say`Kits in service`,
			unit: say`kits`,
			value: wholeAmount(),
			decimals: 0,
			help: say`Kits the unit has in service.`,
		}),
		...measureColumns(solutionMeasures),
		chlorine_product: textColumn({ label: say`Product`, help: say`The product in use.` }),
		...measureColumns(supplyMeasures),
	},
});

export type DayColumn = keyof typeof dayPlanSheet.columns;

/** The column of the sheet that says this of a measure; undefined where it has none. */
export function dayColumn(measure: Measure, part: Part): DayColumn | undefined {
	const key = columnKey(measure, planMeasures[measure], part);
	return isDayColumn(key) ? key : undefined;
}

function isDayColumn(key: string): key is DayColumn {
	return Object.hasOwn(dayPlanSheet.columns, key);
}

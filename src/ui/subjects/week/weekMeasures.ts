import { say } from "../../../core/say.ts";
import type { dayPlanSheet } from "../../../core/sheets/dayPlan.ts";
import type { Measure } from "../../../core/sheets/weekTotal.ts";

export type DayColumn = keyof typeof dayPlanSheet.columns;

/** One row of the plan as people read it: its columns in day-plan.csv and its total in week-total.csv. */
export interface WeekMeasure {
	/** Measures of one kind of work stand together. */
	readonly group: string;
	readonly label: string;
	readonly unit: string;
	/** Column shown large. */
	readonly large: DayColumn;
	/** Column shown small beneath, with the word that says what it is. */
	readonly small?: { readonly column: DayColumn; readonly word: string };
	/** Row of week-total.csv; absent where the days do not add up. */
	readonly total?: Measure;
	/** Row of week-total.csv whose figure shown large is the expected one. */
	readonly totalIsExpected?: boolean;
}

/** In short, because it stands small in a narrow column: expected. */
const expected = (column: DayColumn) => ({ column, word: say`exp.` });

/** The measures of the plan, in the order of the work. Births stand first and can be edited. */
export const weekMeasures: readonly WeekMeasure[] = [
	{
		group: "births",
		label: say`Births expected`,
		unit: say`births`,
		large: "births_expected",
		small: { column: "births_set_aside", word: say`plan` },
		total: "births",
		totalIsExpected: true,
	},
	{
		group: "kits",
		label: say`Kits to reprocess`,
		unit: say`kits`,
		large: "kits_to_reprocess_set_aside",
		small: expected("kits_to_reprocess_expected"),
		total: "kits_to_reprocess",
	},
	{
		group: "kits",
		label: say`Kits needed`,
		unit: say`kits`,
		large: "kits_needed",
		small: { column: "kits_in_service", word: say`have` },
	},
	{
		group: "rounds",
		label: say`Rounds that run`,
		unit: say`rounds`,
		large: "rounds_set_aside",
		small: expected("rounds_expected"),
		total: "rounds",
	},
	{
		group: "solution",
		label: say`Chlorine solution`,
		unit: "L",
		large: "solution_litres_set_aside",
		small: expected("solution_litres_expected"),
		total: "solution_litres",
	},
	{
		group: "product",
		label: say`Product`,
		unit: "",
		large: "chlorine_quantity_set_aside",
		total: "chlorine",
	},
	{
		group: "boiled water",
		label: say`Boiled water`,
		unit: "L",
		large: "boiled_litres_set_aside",
		small: expected("boiled_litres_expected"),
		total: "boiled_litres",
	},
	{
		group: "boiled water",
		label: say`Rinse buckets`,
		unit: say`buckets`,
		large: "boiled_buckets_set_aside",
		total: "boiled_buckets",
	},
	{
		group: "vinegar",
		label: say`Vinegar`,
		unit: "L",
		large: "vinegar_litres_set_aside",
		small: expected("vinegar_litres_expected"),
		total: "vinegar_litres",
	},
	{
		group: "gauze",
		label: say`Gauze`,
		unit: say`pieces`,
		large: "gauze_pieces_set_aside",
		small: expected("gauze_pieces_expected"),
		total: "gauze_pieces",
	},
];

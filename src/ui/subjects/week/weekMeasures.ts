import { say } from "../../../core/say.ts";
import { type DayColumn, dayColumn } from "../../../core/sheets/dayPlan.ts";
import {
	kitMeasures,
	type Measure,
	measures,
	planMeasures,
} from "../../../core/sheets/planMeasures.ts";

/** One row of the plan as people read it: its columns in day-plan.csv and its total in week-total.csv. */
export interface WeekMeasure {
	/** Measures of one kind of work stand together. */
	readonly group: string;
	readonly label: string;
	readonly unit: string;
	/** Beside the unit, where the large figure is not what to prepare for. */
	readonly note?: string;
	/** Column shown large. */
	readonly large: DayColumn;
	/** Column shown small beneath, with the word that says what it is. */
	readonly small?: { readonly column: DayColumn; readonly word: string };
	/** Row of week-total.csv; absent where the days do not add up. */
	readonly total?: Measure;
	/** Row of week-total.csv whose figure shown large is the expected one. */
	readonly totalIsExpected?: boolean;
}

/** In short, because they stand small in a narrow column. */
const smallWords = { expected: say`average`, setAside: say`prepare for` };

const kitsNeeded: WeekMeasure = {
	group: "kits",
	label: say`Kits needed`,
	unit: say`kits`,
	large: "kits_needed",
	small: { column: "kits_in_service", word: say`you have` },
};

/** The measures of the plan, in the order of the work. Births stand first and can be edited. */
export const weekMeasures: readonly WeekMeasure[] = [
	...measures.filter(isOfKits).flatMap(rowOf),
	kitsNeeded,
	...measures.filter((measure) => !isOfKits(measure)).flatMap(rowOf),
];

function isOfKits(measure: Measure): boolean {
	return Object.hasOwn(kitMeasures, measure);
}

function rowOf(measure: Measure): WeekMeasure[] {
	const { row, unit } = planMeasures[measure];
	const large = row && dayColumn(measure, row.large);
	if (!large) return [];
	const beneath = row.large === "expected" ? "setAside" : "expected";
	const small = dayColumn(measure, beneath);
	return [
		{
			group: row.group,
			label: row.label,
			unit,
			large,
			...(small ? { small: { column: small, word: smallWords[beneath] } } : {}),
			...(row.large === "expected" ? { note: say`large: typed or forecast` } : {}),
			total: measure,
			totalIsExpected: row.large === "expected",
		},
	];
}

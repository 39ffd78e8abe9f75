import type { ComputedRow } from "../../../core/computedTable.ts";
import { rowsOf } from "../../../core/plan/rowsOf.ts";
import { dayPlanSheet } from "../../../core/sheets/dayPlan.ts";
import { kitRegisterSheet } from "../../../core/sheets/kitRegister.ts";
import { mixingSheet } from "../../../core/sheets/mixing.ts";
import type { IsoDate } from "../../../core/values/date.ts";
import type { LocalTime } from "../../../core/values/dateTime.ts";
import { wordIn } from "../../state/numberIn.ts";
import type { State } from "../../state/store.ts";
import { printedSetting, unitSetting } from "../../state/unitSetting.ts";
import { kitLabel } from "./kitLabel.ts";
import { rinseLabel } from "./rinseLabel.ts";
import { solutionLabel } from "./solutionLabel.ts";

/** What the person asked for. */
export interface WantedLabels {
	readonly solutions: number;
	/** Which of the mixing rows of the product in use. */
	readonly mix: number;
	readonly made: LocalTime | undefined;
	/** Sets of rinse buckets. */
	readonly rinseSets: number;
	/** Labels of each kit. */
	readonly perKit: number;
	readonly done: IsoDate | undefined;
}

/** Rows of the mixing sheet for the product in use: one for each lot. */
export function mixesInUse(state: State): readonly ComputedRow<typeof mixingSheet>[] {
	const inUse = wordIn(rowsOf(state.plan, dayPlanSheet)[0]?.chlorine_product);
	return rowsOf(state.plan, mixingSheet).filter(
		(row) => inUse !== "" && wordIn(row.product) === inUse,
	);
}

/** Kits that get a label: those not out of service. */
export function kitsToLabel(state: State): readonly ComputedRow<typeof kitRegisterSheet>[] {
	return rowsOf(state.plan, kitRegisterSheet).filter(
		(row) => wordIn(row.state) !== "out_of_service",
	);
}

/** Labels of one set of rinse buckets: one for each; one to be filled in where their number cannot be read. */
export function labelsOfASet(state: State): number {
	return unitSetting(state, "rinse_buckets") ?? 1;
}

/** Every label wanted, in the order in which it is used: solution, rinse, kits. */
export function wantedLabels(state: State, wanted: WantedLabels): HTMLElement[] {
	const unit = unitSetting(state, "unit_name") ?? "";
	const buckets = printedSetting(state, "rinse_buckets");
	const belowC = printedSetting(state, "rinse_below_c");
	const readyLifeDays = printedSetting(state, "ready_life_days");
	const solution = () =>
		solutionLabel({
			unit,
			targetPct: printedSetting(state, "target_strength_pct"),
			lifeHours: printedSetting(state, "solution_life_hours"),
			mix: mixesInUse(state)[wanted.mix],
			made: wanted.made,
		});
	const rinse = () =>
		Array.from({ length: labelsOfASet(state) }, (_, i) =>
			rinseLabel(unit, buckets.value && i + 1, buckets, belowC),
		);
	const kits = () =>
		kitsToLabel(state).map((row) =>
			kitLabel({
				unit,
				kit: wordIn(row.kit),
				kind: wordIn(row.kind),
				readyLifeDays,
				done: wanted.done,
			}),
		);
	return [
		...times(wanted.solutions, () => [solution()]),
		...times(wanted.rinseSets, rinse),
		...times(wanted.perKit, kits),
	];
}

function times(count: number, of: () => HTMLElement[]): HTMLElement[] {
	return Array.from({ length: count }, of).flat();
}

import { rowsOf } from "../../../core/plan/rowsOf.ts";
import { readTable } from "../../../core/read/readTable.ts";
import { dayPlanSheet } from "../../../core/sheets/dayPlan.ts";
import { kindUseSheet } from "../../../core/sheets/kindUse.ts";
import { inYear } from "../../format/onceIn.ts";
import { numberIn } from "../../state/numberIn.ts";
import type { State } from "../../state/store.ts";

/** Kits of a kind used in a year at the mean of the plan's days; undefined while the plan waits. */
export function usesPerYear(state: State, kind: string): number | undefined {
	const days = rowsOf(state.plan, dayPlanSheet);
	const meanOf = (key: "kits_used_expected" | "births_expected") => {
		const values = days.map((row) => numberIn(row[key]) ?? Number.NaN);
		const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
		return Number.isNaN(mean) ? undefined : mean;
	};
	if (kind === "") {
		const uses = meanOf("kits_used_expected");
		return uses === undefined ? undefined : inYear(uses);
	}
	const births = meanOf("births_expected");
	const { rows } = readTable(kindUseSheet, state.workbook.tables[kindUseSheet.file]);
	const share = rows.find(({ value }) => value.kind === kind)?.value.uses_per_100_births;
	return births === undefined || share === undefined ? undefined : inYear((births * share) / 100);
}

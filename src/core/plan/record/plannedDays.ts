import { valueIn } from "../../outcome.ts";
import type { Part } from "../../sheets/columnKey.ts";
import { dayColumn, dayPlanSheet } from "../../sheets/dayPlan.ts";
import { measures } from "../../sheets/planMeasures.ts";
import type { PlannedDay } from "../../sheets/plannedDay.ts";
import type { IsoDate } from "../../values/date.ts";
import type { Plan } from "../plan.ts";
import { rowsOf } from "../rowsOf.ts";

/** What the day plan says of every measure of its days, to be kept when they are past; measures without a figure are left out. */
export function plannedDays(plan: Plan): PlannedDay[] {
	return rowsOf(plan, dayPlanSheet).flatMap((row) => {
		const date = valueIn(row.date) as IsoDate;
		return measures.flatMap((measure): PlannedDay[] => {
			const figure = (part: Part) => {
				const column = dayColumn(measure, part);
				const value = column && valueIn<unknown>(row[column]);
				return typeof value === "number" ? value : undefined;
			};
			const [expected, setAside] = [figure("expected"), figure("setAside")];
			const isSaid = expected !== undefined || setAside !== undefined;
			return isSaid ? [{ date, measure, expected, setAside }] : [];
		});
	});
}

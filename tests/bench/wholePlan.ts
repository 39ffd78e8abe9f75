import { type Plan, plan } from "../../src/core/plan/plan.ts";
import { DAYS_PER_WEEK } from "../../src/core/values/date.ts";
import type { Workbook } from "../../src/core/workbook.ts";

/** The plan with all of its problems and advice known: more than the page waits for. */
export function wholePlan(workbook: Workbook): Plan {
	const made = plan(workbook);
	void made.problems;
	return made;
}

/** The same, and every cell of every day looked at, as a file of it would. */
export function planWithItsDays(workbook: Workbook): Plan {
	return lookedAt(wholePlan(workbook), Number.POSITIVE_INFINITY);
}

/** The plan as far as a page waits for it: a week of its days and the sums. */
export function planOfWeek(workbook: Workbook): Plan {
	const made = plan(workbook);
	void made.found;
	return lookedAt(made, DAYS_PER_WEEK);
}

function lookedAt(made: Plan, days: number): Plan {
	const { "day-plan.csv": dayPlan, "week-total.csv": sums } = made.tables;
	for (const row of [...(dayPlan?.rows.slice(0, days) ?? []), ...(sums?.rows ?? [])])
		for (const cell of Object.values(row)) void cell.outcome;
	return made;
}

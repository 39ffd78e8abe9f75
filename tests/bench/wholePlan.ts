import { type Plan, plan } from "../../src/core/plan/plan.ts";
import type { Workbook } from "../../src/core/workbook.ts";

/** The plan with all of its days, problems and advice worked out: more than the page waits for. */
export function wholePlan(workbook: Workbook): Plan {
	const made = plan(workbook);
	void made.problems;
	return made;
}

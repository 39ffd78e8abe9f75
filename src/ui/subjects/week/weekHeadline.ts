import { rowsOf } from "../../../core/plan/rowsOf.ts";
import type { Problem } from "../../../core/problem.ts";
import { say } from "../../../core/say.ts";
import { dayPlanSheet } from "../../../core/sheets/dayPlan.ts";
import { semicolon } from "../../format/semicolon.ts";
import { daysOf } from "../../state/daysOf.ts";
import { numberIn } from "../../state/numberIn.ts";
import type { State } from "../../state/store.ts";

/** How many kits are enough, in one line; else what the plan waits for. */
export function weekHeadline(state: State): string {
	const isWeek = daysOf(state).length === 7;
	const errors = state.plan.problems.filter((problem) => problem.weight === "error");
	const first = rowsOf(state.plan, dayPlanSheet)[0];
	const needed = numberIn(first?.kits_needed);
	const owned = numberIn(first?.kits_in_service);
	if (!state.plan.made && errors[0]) return waitingHeadline(isWeek, errors[0], errors.length);
	if (needed === undefined || owned === undefined)
		return isWeek ? say`This week needs its numbers` : say`This plan needs its numbers`;
	if (owned >= needed)
		return needed === 1
			? say`1 kit is enough; this unit has ${owned} in service`
			: say`${needed} kits are enough; this unit has ${owned} in service`;
	if (owned === 0)
		return needed === 1
			? say`1 kit is needed; this unit has none in service`
			: say`${needed} kits are needed; this unit has none in service`;
	return needed === 1
		? say`1 kit is needed; this unit has only ${owned} in service`
		: say`${needed} kits are needed; this unit has only ${owned} in service`;
}

/** The first problem by its first words; the list under the plan has every one in full. */
function waitingHeadline(isWeek: boolean, { message }: Problem, count: number): string {
	const [first = message] = message.split(semicolon);
	if (count === 1)
		return isWeek
			? say`This week needs one thing: ${first}`
			: say`This plan needs one thing: ${first}`;
	return isWeek
		? say`This week needs ${count} things, first: ${first}`
		: say`This plan needs ${count} things, first: ${first}`;
}

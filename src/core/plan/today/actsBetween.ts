import type { ReadWorkbook } from "../../read/readWorkbook.ts";
import { inTime } from "../../record/kitState.ts";
import type { LocalTime } from "../../values/dateTime.ts";
import type { Plan } from "../plan.ts";
import type { Act } from "./act.ts";
import { fireActs } from "./fireActs.ts";
import { mixActs } from "./mixActs.ts";
import { roundActs } from "./roundActs.ts";

/**
 * What the plan asks for between two moments, in the order of the clock.
 *
 * A round that is running counts, and so does a stove that should have been lit while the
 * round that waits for its water has not begun.
 *
 * @param from the moment that it is; the core has no clock of its own
 */
export function actsBetween(
	plan: Plan,
	read: ReadWorkbook,
	from: LocalTime,
	until: LocalTime,
): Act[] {
	const rounds = roundActs(plan, read);
	const acts: Act[] = [
		...fireActs(plan, rounds),
		...rounds,
		...mixActs(plan, read.settings, rounds),
	];
	return acts
		.filter((act) => inTime(act.until, from) > 0 && inTime(act.at, until) < 0)
		.sort((a, b) => inTime(a.at, b.at));
}

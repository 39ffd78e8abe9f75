import { type Problem, problem } from "../problem.ts";
import { say } from "../say.ts";
import type { IsoDate } from "../values/date.ts";

/** A line of what was done that is dated after the plan. @param lastDay of the plan */
export function recordInFuture(
	place: Parameters<typeof problem>[0],
	day: IsoDate,
	lastDay: IsoDate,
): Problem {
	return problem(place, {
		code: "record-in-future",
		received: day,
		allowed: say`a day up to ${lastDay}, the last day of the plan`,
		message: say`This line is dated ${day}, after the plan ends; it is kept and not used.`,
	});
}

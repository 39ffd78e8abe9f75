import { solutionKeeps } from "../../chlorine/solutionKeeps.ts";
import { memoizeByObject } from "../../memoize.ts";
import { valueIn } from "../../outcome.ts";
import type { ReadWorkbook } from "../../read/readWorkbook.ts";
import { inTime } from "../../record/kitState.ts";
import type { LocalTime } from "../../values/dateTime.ts";

/**
 * Where solution is made once a day, the rounds on record that made some, in the order of time,
 * and the lines of those that it served: rounds without litres of their own, within the hours
 * that the last solution of their day keeps.
 */
const madeOnRecord = memoizeByObject((read: ReadWorkbook) => {
	const mixed: LocalTime[] = [];
	const served = new Set<number>();
	if (valueIn(read.settings.solution_made) !== "each_day") return { mixed, served };
	const rounds = read.tables.roundsDone.rows
		.map(({ line, value: { date, start, litres } }) => ({
			...{ line, litres },
			at: { date, minutes: start },
		}))
		.sort((a, b) => inTime(a.at, b.at));
	for (const { line, at, litres } of rounds)
		if (litres === null && isGood(read, mixed.at(-1), at)) served.add(line);
		else mixed.push(at);
	return { mixed, served };
});

/** Lines of the rounds done that made no solution, as one made for an earlier round of the day still served them. */
export function servedRounds(read: ReadWorkbook): ReadonlySet<number> {
	return madeOnRecord(read).served;
}

/** Whether solution that a round on record made still serves one that begins at a moment. */
export function isServed(read: ReadWorkbook, at: LocalTime): boolean {
	return madeOnRecord(read).mixed.some((made) => inTime(made, at) < 0 && isGood(read, made, at));
}

function isGood({ settings }: ReadWorkbook, made: LocalTime | undefined, at: LocalTime): boolean {
	const hours = valueIn(settings.solution_life_hours);
	if (made?.date !== at.date || hours === undefined) return false;
	return solutionKeeps(at.minutes - made.minutes, hours);
}

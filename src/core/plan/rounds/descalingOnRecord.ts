import { valueIn } from "../../outcome.ts";
import type { ReadWorkbook } from "../../read/readWorkbook.ts";
import { inTime } from "../../record/kitState.ts";
import { type SinceDescaling, sinceDescaling } from "../../record/sinceDescaling.ts";
import { addDays, type IsoDate } from "../../values/date.ts";
import type { LocalTime } from "../../values/dateTime.ts";

/** How the count of rounds to the next descaling stands. */
export interface DescalingOnRecord extends SinceDescaling {
	/** Start of the last round written down of the plan's own days: rounds up to it are counted as they were done, those after it as they are expected. Undefined before the first. */
	readonly countedTo: LocalTime | undefined;
}

/**
 * Rounds since the last descaling by all that is written down, the plan's own days too: within
 * its days a round that was descaled, or more rounds than expected, move the next descaling.
 *
 * @param firstDay and @param lastDay of the plan; rounds dated after it do not count
 */
export function descalingOnRecord(
	{ tables, settings }: ReadWorkbook,
	firstDay: IsoDate,
	lastDay: IsoDate,
): DescalingOnRecord {
	const rounds = tables.roundsDone.rows.map(({ value }) => value);
	const last = valueIn(settings.last_descaled_on) ?? undefined;
	const ofPlan = rounds
		.filter(({ date }) => date >= firstDay && date <= lastDay)
		.map(({ date, start }): LocalTime => ({ date, minutes: start }))
		.sort(inTime);
	return { ...sinceDescaling(rounds, last, addDays(lastDay, 1)), countedTo: ofPlan.at(-1) };
}

import { valueIn } from "../outcome.ts";
import type { ReadWorkbook } from "../read/readWorkbook.ts";
import { addDays, type IsoDate } from "../values/date.ts";

/**
 * Whether a line of the record or the store counts: not one that is dated after the plan,
 * which is kept and not used, unless the clock has come to its day; kits are used, rounds
 * done and the store counted when the week is over, before the plan moves on.
 */
export function countsByNow(read: ReadWorkbook, day: IsoDate): boolean {
	const first = valueIn(read.settings.plan_start);
	const days = valueIn(read.settings.plan_days);
	if (first === undefined || days === undefined) return true;
	return day <= lastCounted(read, addDays(first, days - 1));
}

/** The last day of which a line counts. @param lastDay of the plan */
export function lastCounted({ today }: Pick<ReadWorkbook, "today">, lastDay: IsoDate): IsoDate {
	return today !== undefined && today > lastDay ? today : lastDay;
}

import { valueIn } from "../outcome.ts";
import type { ReadWorkbook } from "../read/readWorkbook.ts";
import { addDays, type IsoDate } from "../values/date.ts";

/** Whether a day is not after the plan's last one; a round of such a day is kept and not used. */
export function isWithinPlan({ settings }: Pick<ReadWorkbook, "settings">, day: IsoDate): boolean {
	const first = valueIn(settings.plan_start);
	const days = valueIn(settings.plan_days);
	return first === undefined || days === undefined || day < addDays(first, days);
}

/**
 * Whether a line of the store or a reading counts: not one that is dated after the plan, which
 * is kept and not used, unless the clock has come to its day; the store is counted when the
 * week is over, before the plan moves on.
 */
export function countsByNow(read: ReadWorkbook, day: IsoDate): boolean {
	return isWithinPlan(read, day) || (read.today !== undefined && day <= read.today);
}

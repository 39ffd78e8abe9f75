import type { Figure } from "../calculation.ts";
import { addDays, daysFrom, type IsoDate } from "../values/date.ts";
import type { Strength } from "./availableChlorine.ts";
import { isTooWeak } from "./isTooWeak.ts";

/** How far ahead the end of a lot is looked for. */
const DAYS_AHEAD = 3650;

/**
 * Last day on which a lot makes the strength wanted: the earlier of its expiry and
 * the day it fades below it. Strength only ever falls, so the day is found by halving.
 *
 * @returns undefined where it is too weak on the first day already, null where no end is in sight
 */
export function lastUsableDay(
	strengthOn: (day: IsoDate) => Figure<Strength>,
	targetPct: number,
	firstDay: IsoDate,
	expiresOn: IsoDate | null,
): IsoDate | null | undefined {
	const strongAfter = (days: number) => !isTooWeak(strengthOn(addDays(firstDay, days)), targetPct);
	if (!strongAfter(0) || (expiresOn !== null && expiresOn < firstDay)) return undefined;
	const untilExpiry = expiresOn === null ? DAYS_AHEAD : daysFrom(firstDay, expiresOn);
	let strong = 0;
	let weak = Math.min(untilExpiry, DAYS_AHEAD) + 1;
	while (weak - strong > 1) {
		const middle = (strong + weak) >> 1;
		if (strongAfter(middle)) strong = middle;
		else weak = middle;
	}
	return strong === DAYS_AHEAD && expiresOn === null ? null : addDays(firstDay, strong);
}

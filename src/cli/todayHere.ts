import type { IsoDate } from "../core/values/date.ts";

/** Today by this computer's own clock; the Swedish way of writing a date is the international one. */
export function todayHere(): IsoDate {
	return new Date().toLocaleDateString("sv");
}

import type { LocalTime } from "../../core/values/dateTime.ts";

/** Day and time by this computer's own clock. */
export function clockNow(): LocalTime {
	const now = new Date();
	// The Swedish way of writing a date is the international one.
	return { date: now.toLocaleDateString("sv"), minutes: now.getHours() * 60 + now.getMinutes() };
}

import { daysOf } from "./daysOf.ts";
import type { State } from "./store.ts";

/** Today where the plan runs today, else its first day. */
export function dayNow(state: State): string {
	const now = new Date();
	const today = new Date(now.getTime() - now.getTimezoneOffset() * 60_000)
		.toISOString()
		.slice(0, 10);
	const days = daysOf(state);
	return days.includes(today) ? today : (days[0] ?? today);
}

import { clockNow } from "./clockNow.ts";
import { daysOf } from "./daysOf.ts";
import type { State } from "./store.ts";

/** Today where the plan runs today, else its first day. */
export function dayNow(state: State): string {
	const today = clockNow().date;
	const days = daysOf(state);
	return days.includes(today) ? today : (days[0] ?? today);
}

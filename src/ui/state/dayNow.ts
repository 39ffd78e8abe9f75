import { clockNow } from "./clockNow.ts";
import { daysOf } from "./daysOf.ts";
import type { State } from "./store.ts";

/** Today where the plan runs today or is over; before it its first day, for which it is prepared. */
export function dayNow(state: State): string {
	const today = clockNow().date;
	const days = daysOf(state);
	const [first] = days;
	return first !== undefined && today < first ? first : today;
}

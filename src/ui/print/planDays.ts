import { say } from "../../core/say.ts";
import { shownDayAndYear } from "../format/shownDay.ts";
import { daysOf } from "../state/daysOf.ts";
import type { State } from "../state/store.ts";

/** The days of the plan, for the head of a printed page; "" while it has none. */
export function planDays(state: State): string {
	const days = daysOf(state);
	const [from, to] = [days[0], days.at(-1)];
	if (from === undefined || to === undefined) return "";
	return say`${shownDayAndYear(from)} to ${shownDayAndYear(to)}`;
}

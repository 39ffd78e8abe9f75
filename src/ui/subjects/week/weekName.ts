import { say } from "../../../core/say.ts";
import { shownDay, shownDayAndYear } from "../../format/shownDay.ts";
import type { ShownWeek } from "./weeksOf.ts";

/** @example "Mon 8 Mar to Sun 14 Mar 2027" */
export function weekName({ days }: ShownWeek): string {
	const [first = "", last = first] = [days[0], days.at(-1)];
	return days.length === 1
		? shownDayAndYear(first)
		: say`${shownDay(first)} to ${shownDayAndYear(last)}`;
}

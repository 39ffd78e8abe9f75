import { addDays, DAYS_PER_WEEK, type IsoDate } from "../../../core/values/date.ts";
import { dayNow } from "../../state/dayNow.ts";
import { daysOf } from "../../state/daysOf.ts";
import type { State } from "../../state/store.ts";

/** A week of the plan: its place among them, and its days. */
export interface ShownWeek {
	readonly at: number;
	/** How many weeks the plan has. */
	readonly of: number;
	readonly days: readonly IsoDate[];
}

/** The weeks of the plan, from its first day on; the last may be shorter. */
export function weeksOf(state: State): ShownWeek[] {
	const days = daysOf(state);
	const of = Math.ceil(days.length / DAYS_PER_WEEK);
	return Array.from({ length: of }, (_, at) => ({
		at,
		of,
		days: days.slice(at * DAYS_PER_WEEK, (at + 1) * DAYS_PER_WEEK),
	}));
}

/** First day of the week that was chosen; another plan may not have it. */
let chosen: IsoDate | undefined;

/** The week that the person looks at: the one chosen, else that of today, else the first. */
export function shownWeek(state: State): ShownWeek | undefined {
	const weeks = weeksOf(state);
	const of = (day: IsoDate) => weeks.find(({ days }) => days.includes(day));
	return (chosen && of(chosen)) || of(dayNow(state)) || weeks[0];
}

export function chooseWeek({ days }: ShownWeek): void {
	chosen = days[0];
}

/** Whether what is started on a day is for the rounds of this week: from the evening before its first day on. */
export function isStartedFor({ at, of, days }: ShownWeek): (date: IsoDate) => boolean {
	const eve = addDays(days[0] ?? "", -1);
	const last = days.at(-1) ?? "";
	return (date) => (at === 0 || date >= eve) && (at === of - 1 || date < last);
}

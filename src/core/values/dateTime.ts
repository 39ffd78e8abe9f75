import { say } from "../say.ts";
import { clock, writeClock } from "./clock.ts";
import { date, type IsoDate } from "./date.ts";
import { textSchema, type ValueKind } from "./valueKind.ts";

/** A moment on the ward's own wall clock: a day, and minutes after its midnight. */
export interface LocalTime {
	readonly date: IsoDate;
	readonly minutes: number;
}

const allowed = say`a date, or a date and time, for example 2027-03-01 07:30`;

const MOMENT = /^(\S+?)(?:[ T]+(.+))?$/;

/** A date with an optional time; a date alone means midnight. */
export function dateTime(): ValueKind<LocalTime> {
	return {
		allowed,
		numeric: false,
		written: "dateTime",
		tableSchema: { type: "datetime", format: "any" },
		schema: textSchema(allowed, (text) => {
			const [, day, time = "00:00"] = MOMENT.exec(text.trim()) ?? [];
			const readDay = date().schema.safeParse(day);
			const readTime = clock().schema.safeParse(time);
			if (!readDay.success || !readTime.success) return undefined;
			return { date: readDay.data, minutes: readTime.data };
		}),
		write: (value) => `${value.date} ${writeClock(value.minutes)}`,
	};
}

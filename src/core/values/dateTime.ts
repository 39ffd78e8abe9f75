import { say } from "../say.ts";
import { clock, writeClock } from "./clock.ts";
import { date, type IsoDate } from "./date.ts";
import { textSchema, type ValueKind } from "./valueKind.ts";

/** A moment on the ward's own wall clock: a day, and minutes after its midnight. */
export interface LocalTime {
	readonly date: IsoDate;
	readonly minutes: number;
}

/** A moment as somebody wrote it. */
export interface WrittenTime extends LocalTime {
	/** Only the day was written; its minutes are then 0, and it may be any moment of the day. */
	readonly isDayOnly?: true;
}

const allowed = say`a date, or a date and time, for example 2027-03-01 07:30`;

const MOMENT = /^(\S+?)(?:[ T]+(.+))?$/;

/** A date with an optional time; a date alone is a day, and stays one when it is written. */
export function dateTime(): ValueKind<WrittenTime> {
	return {
		allowed,
		numeric: false,
		written: "dateTime",
		tableSchema: { type: "datetime", format: "any" },
		schema: textSchema(allowed, (text) => {
			const [, day, time] = MOMENT.exec(text.trim()) ?? [];
			const readDay = date().schema.safeParse(day);
			if (!readDay.success) return undefined;
			if (time === undefined) return { date: readDay.data, minutes: 0, isDayOnly: true };
			const readTime = clock().schema.safeParse(time);
			return readTime.success ? { date: readDay.data, minutes: readTime.data } : undefined;
		}),
		write: ({ date: day, minutes, isDayOnly }) =>
			isDayOnly ? day : `${day} ${writeClock(minutes)}`,
	};
}

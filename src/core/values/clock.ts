import { say } from "../say.ts";
import { textSchema, type ValueKind } from "./valueKind.ts";

export const MINUTES_PER_HOUR = 60;
export const MINUTES_PER_DAY = 1440;

/** Spreadsheets add seconds, which no plan needs, and in some countries the half of the day. */
const CLOCK = /^(\d{1,2}):(\d{2})(?::[0-5]\d)?(?:\s*([ap])\.?m\.?)?$/i;
/** As French and Portuguese write the time. @example 7h30, 15 h 00, 7h */
const WITH_H = /^(\d{1,2})\s?h(?:\s?(\d{2}))?$/i;
const NOON = 12;
const allowed = say`a time as hours:minutes from 00:00 to 23:59, for example 07:30`;

/** Minutes after midnight as "HH:MM"; beyond 24 hours it starts again from 00:00. */
export function writeClock(minutes: number): string {
	const inDay = ((Math.round(minutes) % MINUTES_PER_DAY) + MINUTES_PER_DAY) % MINUTES_PER_DAY;
	const two = (n: number) => String(n).padStart(2, "0");
	return `${two(Math.floor(inDay / MINUTES_PER_HOUR))}:${two(inDay % MINUTES_PER_HOUR)}`;
}

/** The hour of the day, 0 to 23; with "a" or "p" the hours go from 1 to 12. */
function hourOf(written: number, half: string | undefined): number | undefined {
	if (half === undefined) return written < MINUTES_PER_DAY / MINUTES_PER_HOUR ? written : undefined;
	if (written < 1 || written > NOON) return undefined;
	return (written % NOON) + (half.toLowerCase() === "p" ? NOON : 0);
}

/**
 * A time of day, read as minutes after midnight (0 to 1439). Seconds are let go.
 *
 * @example "07:30" → 450; "04:30:00 PM" → 990; "7h30" → 450
 */
export function clock(): ValueKind<number> {
	return {
		allowed,
		numeric: false,
		tableSchema: { type: "time", format: "%H:%M" },
		schema: textSchema(allowed, (text) => {
			const parts = CLOCK.exec(text.trim()) ?? WITH_H.exec(text.trim());
			if (!parts) return undefined;
			const hour = hourOf(Number(parts[1]), parts[3]);
			const minutes = Number(parts[2] ?? 0);
			if (hour === undefined || minutes >= MINUTES_PER_HOUR) return undefined;
			return hour * MINUTES_PER_HOUR + minutes;
		}),
		write: writeClock,
	};
}

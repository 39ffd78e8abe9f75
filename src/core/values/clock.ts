import { say } from "../say.ts";
import { textSchema, type ValueKind } from "./valueKind.ts";

export const MINUTES_PER_HOUR = 60;
export const MINUTES_PER_DAY = 1440;

const CLOCK = /^(\d{1,2}):(\d{2})$/;
const allowed = say`a time as hours:minutes from 00:00 to 23:59, for example 07:30`;

/** Minutes after midnight as "HH:MM"; beyond 24 hours it starts again from 00:00. */
export function writeClock(minutes: number): string {
	const inDay = ((Math.round(minutes) % MINUTES_PER_DAY) + MINUTES_PER_DAY) % MINUTES_PER_DAY;
	const two = (n: number) => String(n).padStart(2, "0");
	return `${two(Math.floor(inDay / MINUTES_PER_HOUR))}:${two(inDay % MINUTES_PER_HOUR)}`;
}

/** A time of day, read as minutes after midnight (0 to 1439). */
export function clock(): ValueKind<number> {
	return {
		allowed,
		numeric: false,
		tableSchema: { type: "time", format: "%H:%M" },
		schema: textSchema(allowed, (text) => {
			const parts = CLOCK.exec(text.trim());
			if (!parts) return undefined;
			const minutes = Number(parts[1]) * MINUTES_PER_HOUR + Number(parts[2]);
			return Number(parts[2]) < MINUTES_PER_HOUR && minutes < MINUTES_PER_DAY ? minutes : undefined;
		}),
		write: writeClock,
	};
}

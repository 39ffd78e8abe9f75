import { isoDate } from "../../core/values/date.ts";

/** How a spreadsheet shows a number. */
export type Shown = "number" | "percent" | "date" | "time" | "dateTime";

const SECONDS = 86_400;
/** Days from 1970-01-01 to the day that spreadsheets count from: 1899-12-30, in old ones 1904-01-01. */
const DAY_0 = -25_569;
const DAY_0_OF_1904 = -24_107;
/** 9999-12-31. */
const LAST = 2_958_465;

/**
 * The clear text of a number that a spreadsheet holds: as it is, with %, or as the day and
 * time that the spreadsheet counts in days. A number is never rounded; times are, to the second.
 *
 * @param serial a number; the days since 1899-12-30 where it is shown as a date or time
 * @example clearText(46446.875, "dateTime") // "2027-02-28 21:00"
 */
export function clearText(serial: number, shown: Shown, from1904 = false): string {
	const percent = Number((serial * 100).toPrecision(15));
	if (shown === "percent" && Number.isFinite(percent)) return `${percent}%`;
	if (shown === "number" || shown === "percent" || serial < 0 || serial > LAST)
		return String(serial);
	const seconds = Math.round(serial * SECONDS);
	if (shown === "time") return clockText(seconds);
	const days = Math.floor(seconds / SECONDS);
	const date = isoDate(days + (from1904 ? DAY_0_OF_1904 : DAY_0));
	const rest = seconds - days * SECONDS;
	return shown === "date" && rest === 0 ? date : `${date} ${clockText(rest)}`;
}

/** Hours, minutes and, where there are any, seconds. */
function clockText(seconds: number): string {
	const parts = [Math.floor(seconds / 3600), Math.floor(seconds / 60) % 60, seconds % 60];
	const [hours, minutes, rest] = parts.map((part) => String(part).padStart(2, "0"));
	return `${hours}:${minutes}${rest === "00" ? "" : `:${rest}`}`;
}

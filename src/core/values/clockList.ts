import { say } from "../say.ts";
import { clock, writeClock } from "./clock.ts";
import { textSchema, type ValueKind } from "./valueKind.ts";

/** More times than births a day can be; a longer list is a slip. */
const MOST_TIMES = 500;
const LONGEST_LIST = 10 * MOST_TIMES;
const allowed = say`clock times with a space between, for example 03:10 14:25, or blank`;

/** Clock times of one day, read as minutes after midnight; blank is an empty list. */
export function clockList(): ValueKind<readonly number[]> {
	const one = clock().schema;
	return {
		allowed,
		numeric: false,
		tableSchema: { type: "string" },
		schema: textSchema(allowed, (text) => {
			const trimmed = text.trim();
			if (trimmed.length > LONGEST_LIST) return undefined;
			const times =
				trimmed === ""
					? []
					: trimmed.split(/[\s,]+(?![ap]\.?m\b)/i).map((part) => one.safeParse(part));
			if (times.length > MOST_TIMES) return undefined;
			return times.every((time) => time.success) ? times.map((time) => time.data) : undefined;
		}),
		write: (times) => times.map(writeClock).join(" "),
	};
}

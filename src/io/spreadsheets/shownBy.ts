import type { Shown } from "./clearText.ts";

/** Formats that every spreadsheet knows by number (ECMA-376 part 1, 18.8.30), and those of East Asian editions. */
const BUILT_IN: readonly (readonly [first: number, last: number, shown: Shown])[] = [
	[9, 10, "percent"],
	[14, 17, "date"],
	[18, 21, "time"],
	[22, 22, "dateTime"],
	[27, 31, "date"],
	[32, 35, "time"],
	[36, 36, "date"],
	[45, 47, "time"],
	[50, 58, "date"],
];

/** How a number is shown by a format that has a number and no code of its own. */
export function builtInFormat(id: number): Shown {
	return BUILT_IN.find(([first, last]) => id >= first && id <= last)?.[2] ?? "number";
}

/** Texts in quotes, escaped letters, and what stands in brackets but for hours, minutes and seconds that go on counting. */
const NOT_THE_FORMAT = /"[^"]*"?|\\.|[_*].|\[(?!(?:h+|m+|s+)\])[^\]]*\]?/gi;
const HALF_OF_DAY = /am\/pm|a\/p/gi;

/**
 * How a number is shown by a format code.
 *
 * @example shownBy('dd/mm/yyyy" at "hh:mm') // "dateTime"
 */
export function shownBy(code: string): Shown {
	const [first = ""] = code.replace(NOT_THE_FORMAT, "").replace(HALF_OF_DAY, "h").split(";");
	if (/general/i.test(first)) return "number";
	const time = /[hs]/i.test(first);
	const date = /[yd]/i.test(first) || (/m/i.test(first) && !time);
	if (date) return time ? "dateTime" : "date";
	if (time) return "time";
	return first.includes("%") ? "percent" : "number";
}

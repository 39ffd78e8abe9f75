import type { Problem } from "../core/problem.ts";

/** Characters that break a line, steer a terminal, or turn the reading direction. */
const UNPRINTABLE = /[\p{Cc}\u2028\u2029\u200e\u200f\u202a-\u202e\u2066-\u2069]/gu;

/**
 * A problem as one line for a terminal: how much it weighs, where it is, what it is.
 *
 * @example "Error, births.csv line 3, births: Births expected: "-1" was found; …"
 */
export function problemLine({ weight, file, line, column, message }: Problem): string {
	const place = [
		weight === "error" ? "Error" : "Advice",
		[file, line === null ? "" : `line ${line}`].filter((part) => part !== "").join(" "),
		column,
	].filter((part) => part !== "");
	return `${place.join(", ")}: ${message}`.replace(UNPRINTABLE, "\ufffd");
}

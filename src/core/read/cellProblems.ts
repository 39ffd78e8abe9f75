import { advice, type Place, type Problem, problem } from "../problem.ts";
import { say } from "../say.ts";

/** A cell that could not be understood. */
export function badCell(place: Place, label: string, text: string, allowed: string): Problem {
	return problem(place, {
		code: "bad-cell",
		received: text,
		allowed,
		message:
			text.trim() === ""
				? say`${label}: it is blank; allowed is ${allowed}.`
				: say`${label}: "${shown(text)}" was found; allowed is ${allowed}.`,
	});
}

/** More cells in a line than the first line names. */
export function tooManyCells(place: Place, cells: readonly string[], width: number): Problem {
	return advice(place, {
		code: "too-many-cells",
		received: shown(cells.slice(width).join(", ")),
		allowed: say`${width} cells`,
		message: say`Line ${place.line} of ${place.file} has ${cells.length} cells where the first line names ${width}; the rest is not used.`,
	});
}

/** The longest piece of someone's text that a message repeats. */
const LONGEST_QUOTE = 60;

/** Someone's text, shortened for a message. */
export function shown(text: string): string {
	return text.length > LONGEST_QUOTE ? `${beginning(text, LONGEST_QUOTE)}…` : text;
}

/** At most so many characters of a text, and no half of a letter that takes two. */
export function beginning(text: string, most: number): string {
	return text.slice(0, most).replace(/[\ud800-\udbff]$/, "");
}

import type { Problem } from "../../core/problem.ts";
import { say } from "../../core/say.ts";
import { sheetOf } from "../../core/sheets/sheetOf.ts";
import { shownWord } from "./choiceWords.ts";
import { daysInWords } from "./daysInWords.ts";

/** What was typed stands between quotation marks, and stays as it was. */
const QUOTED = /("[^"]*"|“[^”]*”|«[^»]*»)/;

/**
 * A problem as pages tell it. Its message is for files and for programs at the command line
 * too, so it writes days, sheets and choices as files have them; here they stand in words.
 * @example "kits.csv" → "“Kits of the unit”"; "2027-03-03" → "Wed 3 Mar"
 */
export function problemWords({ code, message }: Problem): string {
	// Of a cell that could not be read, days are the examples of how one is written.
	const isOfForm = code === "bad-cell";
	return message
		.split(QUOTED)
		.map((part, at) => (at % 2 === 1 ? part : inWords(part, isOfForm)))
		.join("");
}

function inWords(text: string, isOfForm: boolean): string {
	const days = isOfForm ? text : daysInWords(text);
	return days
		.replace(/\b[a-z]+(-[a-z]+)*\.csv\b/g, (file) => {
			const title = sheetOf(file)?.title;
			return title === undefined ? file : say`“${title}”`;
		})
		.replace(/\b[a-z]+(_[a-z]+)+\b/g, shownWord);
}

import { say } from "../say.ts";
import { LONGEST_NOTE } from "../values/note.ts";
import { beginning } from "./cellProblems.ts";

/** A text as a cell can hold it: a very long one is cut, and says so. */
export function asNote(text: string): string {
	if (text.length <= LONGEST_NOTE) return text;
	const remark = say`… (${text.length} characters in all)`;
	return beginning(text, LONGEST_NOTE - remark.length) + remark;
}

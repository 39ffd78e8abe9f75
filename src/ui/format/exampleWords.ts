import { decimalSign } from "../../core/language.ts";
import { writeNumber } from "../../core/values/number.ts";
import { shownWord } from "./choiceWords.ts";
import { partWords } from "./partWords.ts";
import { semicolon } from "./semicolon.ts";

/** A value of a worked example, whole and unrounded: what stands there is what runs. */
export function exampleWords(value: unknown): string {
	if (typeof value === "number") return writeNumber(value).replace(".", decimalSign);
	if (typeof value !== "object" || value === null) return shownWord(String(value));
	if (Array.isArray(value) || ArrayBuffer.isView(value))
		return `[${Array.from(value as ArrayLike<unknown>, exampleWords).join(semicolon)}]`;
	const parts = Object.entries(value).map(
		([name, part]) => `${partWords[name] ?? name} ${exampleWords(part)}`,
	);
	return `{${parts.join(semicolon)}}`;
}

import { type Problem, problem } from "../core/problem.ts";
import type { Customs, Question } from "../core/read/block/blockTable.ts";
import { say } from "../core/say.ts";

/** Several files that say they are one sheet, by the names they were given under. */
export interface FileQuestion {
	readonly about: "file";
	readonly file: string;
	readonly names: readonly string[];
}

/** What only the person who gave the files can know. */
export type OpenQuestion = Question | FileQuestion;

/** What the person answered, or said beforehand. */
export interface Answers extends Customs {
	/** Of several files that claim one sheet: the name of the one that counts, by sheet. */
	readonly files?: Readonly<Record<string, string>>;
	/** Name of the encoding of all files, where it is neither UTF-8 nor UTF-16. */
	readonly encoding?: string;
}

/** An open question as a problem: with both readings, so that whoever sees the list can answer. */
export function questionProblem(question: OpenQuestion): Problem {
	if (question.about === "file") {
		const names = question.names.join(", ");
		return problem(
			{ file: question.file, line: null, column: "" },
			{
				code: "doubled-file",
				received: names,
				allowed: say`each file once`,
				message: say`${question.names.length} files say they are ${question.file} (${names}), and nobody can tell which one counts; none of them was read.`,
			},
		);
	}
	const { about, place, label, text, readings } = question;
	const [one, other] = readings;
	const where = place.line === null ? place.file : say`${place.file} line ${place.line}`;
	return problem(place, {
		code: about === "numbers" ? "two-numbers" : "two-dates",
		received: text,
		allowed: say`${one} or ${other}`,
		message:
			about === "numbers"
				? say`${where}, ${label}: “${text}” can be read as ${one} or as ${other}, and nothing in the files tells which. Say whether numbers have a decimal point or a decimal comma; nothing is planned until then.`
				: say`${where}, ${label}: “${text}” can be ${one} or ${other}, and nothing in the files tells which. Say whether the day or the month stands first; nothing is planned until then.`,
	});
}

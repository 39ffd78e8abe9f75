import { say } from "../../core/say.ts";
import type { Answers, OpenQuestion } from "../../io/fileQuestion.ts";
import { type ReadFiles, readFiles } from "../../io/readFiles.ts";
import type { NamedBytes } from "../../io/unzip.ts";
import { ask } from "../shell/ask.ts";
import { questionWords } from "./questionWords.ts";

/** Reads files and asks the person what only they can know, one question after the other. @returns undefined where one is left unanswered */
export async function readAsking(given: readonly NamedBytes[]): Promise<ReadFiles | undefined> {
	let answers: Answers = {};
	for (;;) {
		const read = readFiles(given, answers);
		const [question] = read.questions;
		if (!question) return read;
		const answer = await answerTo(question, answers);
		if (!answer) return undefined;
		answers = answer;
	}
}

/** The answers with one more; undefined where none was given. */
async function answerTo(question: OpenQuestion, before: Answers): Promise<Answers | undefined> {
	if (question.about === "file") {
		const name = await ask({
			even: true,
			title: say`Which file counts?`,
			text: [
				say`Several files say they are the same sheet, ${question.file}. Only one can count; the others are left as they are.`,
			],
			answers: question.names.map((each) => [each, each] as const),
		});
		return name === undefined
			? undefined
			: { ...before, files: { ...before.files, [question.file]: name } };
	}
	const chosen = await ask(questionWords(question));
	return chosen && { ...before, [question.about]: chosen };
}

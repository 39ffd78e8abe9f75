import { nowhere, type Problem, problem } from "../../core/problem.ts";
import { say } from "../../core/say.ts";
import type { Answers, OpenQuestion } from "../../io/fileQuestion.ts";
import { type ReadFiles, readFiles } from "../../io/readFiles.ts";
import type { NamedBytes } from "../../io/unzip.ts";
import { ask } from "../shell/ask.ts";
import { questionWords } from "./questionWords.ts";
import { spreadsheets } from "./spreadsheets.ts";

/** Reads files and asks the person what only they can know, one question after the other. @returns undefined where one is left unanswered */
export async function readAsking(given: readonly NamedBytes[]): Promise<ReadFiles | undefined> {
	let answers: Answers = {};
	for (;;) {
		const read = await readWhole(given, answers);
		const [question] = read.questions;
		if (!question) return read;
		const answer = await answerTo(question, answers);
		if (!answer) return undefined;
		answers = answer;
	}
}

/** Reads files; what reads spreadsheets is brought where one is among them. */
async function readWhole(given: readonly NamedBytes[], answers: Answers): Promise<ReadFiles> {
	const read = readFiles(given, answers, spreadsheets.there);
	if (!read.needsSpreadsheets) return read;
	try {
		return readFiles(given, answers, await spreadsheets.bring());
	} catch {
		return { ...read, problems: [...read.problems, notBrought()] };
	}
}

function notBrought(): Problem {
	return problem(nowhere, {
		code: "spreadsheets-not-read",
		received: "",
		allowed: say`a connection to where this page came from, once`,
		message: say`The part of the program that reads spreadsheets could not be fetched, so no spreadsheet was read. Try again with a connection, or save the sheets as CSV.`,
	});
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

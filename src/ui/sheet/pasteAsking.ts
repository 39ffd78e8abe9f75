import { type ReadPaste, readPaste } from "../../core/edit/readPaste.ts";
import type { Customs } from "../../core/read/block/blockTable.ts";
import type { Workbook } from "../../core/workbook.ts";
import { questionWords } from "../files/questionWords.ts";
import type { Writing } from "../page.ts";
import { ask } from "../shell/ask.ts";

/** Reads what was pasted and asks what only the person can know. @returns undefined where a question is left unanswered */
export async function pasteAsking(
	workbook: Workbook,
	{ file, texts }: Writing,
): Promise<ReadPaste | undefined> {
	let answers: Customs = {};
	for (;;) {
		const read = readPaste(workbook, file, texts, answers);
		const [question] = read.questions;
		if (!question) return read;
		const answer = await ask(questionWords(question));
		if (!answer) return undefined;
		answers = { ...answers, [question.about]: answer };
	}
}

import type { Customs, Question } from "../../../core/read/block/blockTable.ts";
import { questionWords } from "../../files/questionWords.ts";
import { ask } from "../../shell/ask.ts";

/** Asks the person which of two meanings an order's numbers or dates have. */
export async function askCustoms(question: Question): Promise<Customs | undefined> {
	const answer = await ask(questionWords(question));
	return answer && { [question.about]: answer };
}

import type { Customs, Question } from "../../../core/read/block/blockTable.ts";
import { say } from "../../../core/say.ts";
import type { IsoDate } from "../../../core/values/date.ts";
import { nextTurn } from "../../dom/nextTurn.ts";
import { questionWords } from "../../files/questionWords.ts";
import { counted } from "../../format/counted.ts";
import { ask } from "../../shell/ask.ts";
import type { District } from "./district.ts";
import type { Progress } from "./progressBar.ts";
import { readUnit } from "./readUnit.ts";

/**
 * Reads and plans what waits, a unit at a time, and gives the page a turn after each, until
 * all are read or somebody stops it. What is left waits on.
 */
export async function readDistrict(
	district: District,
	today: IsoDate | undefined,
	bar: Progress,
	stopped: AbortSignal,
): Promise<void> {
	const all = district.waiting.length;
	const asked = answersOnce();
	for (;;) {
		const [next, ...rest] = district.waiting;
		if (!next || stopped.aborted) break;
		district.waiting = rest;
		district.add(await readUnit(next, today, asked));
		const read = all - district.waiting.length;
		bar.show(read, all, say`${read} of ${counted(all, "unit")} read and planned`);
		await nextTurn();
	}
}

/** Asks a person; what they answer holds for the orders after it too. */
function answersOnce(): (question: Question) => Promise<Customs | undefined> {
	let answers: Customs = {};
	return async (question) => {
		const before = answers[question.about];
		if (before !== undefined) return { [question.about]: before };
		const answer = await ask(questionWords(question));
		if (answer === undefined) return undefined;
		answers = { ...answers, [question.about]: answer };
		return { [question.about]: answer };
	};
}

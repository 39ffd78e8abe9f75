import { valueIn } from "../../../core/outcome.ts";
import { roundsOfRecord } from "../../../core/plan/kits/kitRecord.ts";
import { type PieceRounds, pieceRounds } from "../../../core/plan/kits/pieceRounds.ts";
import { readWorkbook } from "../../../core/read/readWorkbook.ts";
import { say } from "../../../core/say.ts";
import { counted } from "../../format/counted.ts";
import { shownDateAndYear, shownDay } from "../../format/shownDay.ts";
import type { State } from "../../state/store.ts";
import type { ToDo } from "../store/toDo.ts";

/** Pieces whose limit of rounds is reached, or comes before a spare could be here. */
export function piecesToReplace({ workbook }: State): ToDo[] {
	const read = readWorkbook(workbook);
	const firstDay = valueIn(read.settings.plan_start);
	if (firstDay === undefined) return [];
	// When a round ended does not matter here.
	const rounds = roundsOfRecord(read, () => 0);
	return pieceRounds(read, rounds, firstDay)
		.filter(({ isDue }) => isDue)
		.map(toReplace);
}

function toReplace({ kit, row, rounds, limit, since, isSpare, limitOn }: PieceRounds): ToDo {
	const from = shownDateAndYear(since);
	return {
		item: say`${row.value.piece}, kit ${kit}`,
		amount: counted(row.value.count, "piece"),
		by: rounds >= limit ? say`today` : say`by ${shownDay(limitOn ?? "")}`,
		more: isSpare
			? say`${rounds} of ${limit} rounds, counted from the spare put in on ${from}.`
			: say`${rounds} of ${limit} rounds, counted from the first one written down, on ${from}.`,
	};
}

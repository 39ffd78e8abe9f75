import { advice, type Problem } from "../../problem.ts";
import { say } from "../../say.ts";
import { kindsSheet } from "../../sheets/kinds.ts";
import type { IsoDate } from "../../values/date.ts";
import type { UnitFigures } from "../unitFigures.ts";
import { type PieceRounds, pieceRounds } from "./pieceRounds.ts";

/** Pieces that have come to their limit of rounds, or will before a spare could be here. */
export function pieceAdvice({ read, roundsDone }: UnitFigures, firstDay: IsoDate): Problem[] {
	return pieceRounds(read, roundsDone, firstDay)
		.filter(({ isDue }) => isDue)
		.map((piece) =>
			advice(
				{ file: kindsSheet.file, line: piece.row.line, column: "replace_after_rounds" },
				{
					code: piece.rounds >= piece.limit ? "piece-past-limit" : "piece-near-limit",
					received: say`${piece.rounds} rounds`,
					allowed: say`at most ${piece.limit} rounds`,
					message: pieceWords(piece),
				},
			),
		);
}

function pieceWords({ kit, row, rounds, limit, since, limitOn, leadDays }: PieceRounds): string {
	const { piece } = row.value;
	if (rounds >= limit)
		return say`Kit ${kit}: ${piece} has gone through ${rounds} rounds since ${since}, and ${limit} are the most. Put a new one in before the kit is used again, and issue it in the journal with the kit's mark in the note.`;
	return leadDays === undefined
		? say`Kit ${kit}: ${piece} has gone through ${rounds} of ${limit} rounds since ${since} and comes to its limit about ${limitOn}. Find a spare; listed among the items of the store under this name, it is ordered in time.`
		: say`Kit ${kit}: ${piece} has gone through ${rounds} of ${limit} rounds since ${since} and comes to its limit about ${limitOn}. A spare takes ${leadDays} days to come: order it now if none is in the store.`;
}

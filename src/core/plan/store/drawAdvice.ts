import { advice, type Problem } from "../../problem.ts";
import type { ReadWorkbook } from "../../read/readWorkbook.ts";
import { say } from "../../say.ts";
import { journalSheet } from "../../sheets/journal.ts";
import { roundsDoneSheet } from "../../sheets/roundsDone.ts";
import { countsByNow } from "../countsByNow.ts";
import { drawnDaysOf, drawsOfRounds, isDrawnAlready, isDrawnByRounds } from "./drawsOfRounds.ts";
import { servedRounds } from "./servedRounds.ts";

/** Where rounds draw their product: issues that would count twice, and rounds for which nothing is drawn. */
export function drawAdvice(read: ReadWorkbook): Problem[] {
	if (!isDrawnByRounds(read)) return [];
	const draws = drawsOfRounds(read);
	const drawnDays = drawnDaysOf(draws);
	const twice = read.tables.journal.rows
		.filter(({ value }) => isDrawnAlready(value, drawnDays))
		.map(({ line, value: { item, day, quantity } }) =>
			advice(
				{ file: journalSheet.file, line, column: "entry" },
				{
					code: "issue-on-round-day",
					received: String(quantity),
					allowed: say`no issue of the product on a day on which rounds draw it`,
					message: say`${quantity} of ${item} was issued on ${day}, a day on which rounds draw it from stock; the issue is not counted a second time. Did it go elsewhere?`,
				},
			),
		);
	const known = new Set([...draws.map(({ line }) => line), ...servedRounds(read)]);
	const without = read.tables.roundsDone.rows.filter(
		({ line, value }) => !known.has(line) && countsByNow(read, value.date),
	);
	const last = without.at(-1);
	if (!last) return twice;
	return [
		...twice,
		advice(
			{ file: roundsDoneSheet.file, line: last.line, column: "lot" },
			{
				code: "round-draws-nothing",
				received: last.value.lot,
				allowed: say`a lot of the product in the store, strong enough for the round`,
				message: say`Rounds for which nothing is drawn from stock: ${without.length}, the last on ${last.value.date}; they name no lot in the store, or one that is too weak. Until they do, stock may be less than it says.`,
			},
		),
	];
}

import { valueIn } from "../../outcome.ts";
import { type Problem, problem } from "../../problem.ts";
import type { GoodRow } from "../../read/goodRow.ts";
import type { ReadWorkbook } from "../../read/readWorkbook.ts";
import { say } from "../../say.ts";
import { type LotsRow, lotsSheet } from "../../sheets/lots.ts";

/** Why the day on which a lot was made cannot be right: after it came, after today, or after the plan begins while it is in the store; undefined where it can. */
export function madeOnProblem(read: ReadWorkbook, row: GoodRow<LotsRow>): Problem | undefined {
	const { lot, made_on: made, received_on: received } = row.value;
	if (made === null) return undefined;
	const place = { file: lotsSheet.file, line: row.line, column: "made_on" };
	if (received !== null && made > received)
		return problem(place, {
			code: "made-after-received",
			received: made,
			allowed: say`${received} or earlier`,
			message: say`Lot ${lot} was made on ${made}, after it was received on ${received}; look at the label and at the year.`,
		});
	const { today } = read;
	if (today !== undefined && made > today)
		return problem(place, {
			code: "made-after-today",
			received: made,
			allowed: say`${today} or earlier`,
			message: say`Lot ${lot} was made on ${made}, and by this computer's clock today is ${today}; look at the label and at the year, and whether the clock is right.`,
		});
	const firstDay = valueIn(read.settings.plan_start);
	if (firstDay === undefined || made <= firstDay) return undefined;
	if (isStillToCome(read, row.value)) return undefined;
	return problem(place, {
		code: "made-in-future",
		received: made,
		allowed: say`${firstDay} or earlier`,
		message: say`Lot ${lot} is in the store and was made on ${made}, after the plan begins on ${firstDay}; look at the label and at the year.`,
	});
}

/** Announced, without a day of receipt and without a line of the journal. What rounds drew is not asked: that is worked out from this lot's strength. */
function isStillToCome(
	{ tables: { journal } }: ReadWorkbook,
	{ item, lot, arrives_on: arrives, received_on: received }: LotsRow,
): boolean {
	const isInJournal = () =>
		journal.rows.some(({ value }) => value.item === item && value.lot === lot);
	return arrives !== null && received === null && !isInJournal();
}

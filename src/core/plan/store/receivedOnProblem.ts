import { type Problem, problem } from "../../problem.ts";
import type { GoodRow } from "../../read/goodRow.ts";
import type { ReadWorkbook } from "../../read/readWorkbook.ts";
import { say } from "../../say.ts";
import { type LotsRow, lotsSheet } from "../../sheets/lots.ts";
import { countsByNow } from "../countsByNow.ts";

/** Why the day on which a lot was received cannot be right: a day after the plan that the clock has not come to; undefined where it can. */
export function receivedOnProblem(read: ReadWorkbook, row: GoodRow<LotsRow>): Problem | undefined {
	const { lot, received_on: received } = row.value;
	if (received === null || countsByNow(read, received)) return undefined;
	return problem(
		{ file: lotsSheet.file, line: row.line, column: "received_on" },
		{
			code: "received-in-future",
			received,
			allowed: say`a day that has come, or blank`,
			message: say`Lot ${lot} is said to be received on ${received}, a day still to come; look at the month and the year.`,
		},
	);
}

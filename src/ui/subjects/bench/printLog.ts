import { say } from "../../../core/say.ts";
import type { Sheet } from "../../../core/sheet.ts";
import { roundsDoneSheet } from "../../../core/sheets/roundsDone.ts";
import { usesSheet } from "../../../core/sheets/uses.ts";
import { paperForm } from "../../print/paperForm.ts";
import { paperTable } from "../../print/paperTable.ts";
import { printOut } from "../../print/printOut.ts";
import type { State } from "../../state/store.ts";
import { roundsLack } from "./roundsLack.ts";

const USES = 10;
const ROUNDS = 9;

/** A log to hang by the bench, printed. */
export function printLog(state: State): void {
	printOut({ name: say`Print a log for the bench`, pages: () => [logPage(state)] }, state);
}

/** Its columns are those of the sheets that this unit fills, in their order, so that it is copied in without a thought. */
export function logPage(state: State): HTMLElement {
	return paperForm(
		state,
		"bench-log",
		{
			way: "lying",
			title: say`Log for the bench`,
			cautions: [
				say`No name or number of a mother or a baby. What happened: used, opened, or no kit ready. Copied into the workbook on Monday.`,
			],
		},
		logTable(usesSheet, USES),
		logTable(roundsDoneSheet, ROUNDS, roundsLack(state)),
	);
}

function logTable(sheet: Sheet, rows: number, lacking: readonly string[] = []): HTMLElement {
	// The mark of a line is the program's own; nobody writes it by hand.
	const byHand = Object.entries(sheet.columns).filter(
		([key]) => key !== "id" && !lacking.includes(key),
	);
	const columns = byHand.map(([, { label, unit }]) => ({
		label,
		unit,
		blank: true,
	}));
	const blank = Array.from({ length: rows }, () => [""]);
	return paperTable(sheet.title, columns, [{ rows: blank }]);
}

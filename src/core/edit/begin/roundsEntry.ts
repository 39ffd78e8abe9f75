import { textsOf } from "../../read/textsOf.ts";
import { say } from "../../say.ts";
import { roundsSheet } from "../../sheets/rounds.ts";
import { writeClock } from "../../values/clock.ts";
import { clockList } from "../../values/clockList.ts";
import { withTable } from "../../workbook.ts";
import { meaning } from "../meaning.ts";
import { notAllowed } from "../notAllowed.ts";
import type { BeginEntry } from "./beginEntry.ts";

const LABEL = say`Times of the rounds`;
const ALLOWED = say`clock times from 00:00 to 23:59 with a space between, each once, for example 07:00 15:00`;

/** The rounds of a day, entered as their times. A round that stays keeps its name. */
export const roundsEntry: BeginEntry = {
	key: "rounds",
	label: LABEL,
	help: say`When used kits are reprocessed each day. Where each kit is done as soon as it has been used, say so in the settings instead.`,
	unit: () => say`h:min`,
	allowed: () => ALLOWED,
	read(workbook) {
		const rounds = textsOf(workbook, roundsSheet);
		const starts = rounds.rows.map((row) => rounds.cell(row, "start").trim());
		return starts.filter(Boolean).join(" ");
	},
	write(workbook, text) {
		const read = clockList().schema.safeParse(text);
		const starts = read.success ? read.data : [];
		if (starts.length === 0 || new Set(starts).size < starts.length)
			return notAllowed(LABEL, text, ALLOWED);
		const rounds = textsOf(workbook, roundsSheet);
		const rows = starts.map((start) => {
			const before = rounds.rows.find(
				(row) => meaning(roundsSheet.columns.start, rounds.cell(row, "start")) === start,
			);
			return before ?? rounds.row(undefined, { start: writeClock(start) });
		});
		return withTable(workbook, roundsSheet.file, { header: rounds.header, rows });
	},
};

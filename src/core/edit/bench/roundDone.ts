import { readTable } from "../../read/readTable.ts";
import { say } from "../../say.ts";
import { roundsDoneSheet } from "../../sheets/roundsDone.ts";
import { clock, writeClock } from "../../values/clock.ts";
import type { Workbook } from "../../workbook.ts";
import { type LineTexts, lineWritten, type Written } from "./lineWritten.ts";

/** Writes a round as it was done: a line of rounds-done.csv. No two rounds begin at the same time. */
export function roundDone(workbook: Workbook, texts: LineTexts): Written {
	if ((texts.kits ?? "").trim() === "")
		return { ok: false, wrong: [{ column: "kits", words: say`Choose the kits of the round.` }] };
	const start = clock().schema.safeParse(texts.start);
	const day = (texts.date ?? "").trim();
	const { rows } = readTable(roundsDoneSheet, workbook.tables[roundsDoneSheet.file]);
	const isThere =
		start.success && rows.some(({ value }) => value.date === day && value.start === start.data);
	if (!isThere) return lineWritten(workbook, roundsDoneSheet, texts);
	const words = say`A round of this day that began at ${writeClock(start.data)} is written down already, under Rounds done.`;
	return { ok: false, wrong: [{ column: "start", words }] };
}

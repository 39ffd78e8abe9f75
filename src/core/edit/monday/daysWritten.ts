import { textsOf } from "../../read/textsOf.ts";
import { recordsSheet } from "../../sheets/records.ts";
import type { IsoDate } from "../../values/date.ts";
import type { Workbook } from "../../workbook.ts";
import { wrongFor } from "../notAllowed.ts";
import { withRow } from "../withRow.ts";

/** A day of the register as typed. */
export interface DayTexts {
	readonly date: IsoDate;
	readonly births: string;
	readonly kitsUsed: string;
}

/** The workbook with its days, or what keeps them from being written, by day. */
export type DaysWritten =
	| { readonly ok: true; readonly workbook: Workbook }
	| {
			readonly ok: false;
			readonly wrong: readonly { readonly date: IsoDate; readonly words: string }[];
	  };

const { births, kits_used: kitsUsed } = recordsSheet.columns;

/** What the register says of a day; blank where it says nothing. */
export function dayTexts(workbook: Workbook, day: IsoDate): DayTexts {
	const { rows, cell } = textsOf(workbook, recordsSheet);
	const row = rows.find((texts) => cell(texts, "date").trim() === day);
	const text = (column: "births" | "kits_used") => (row ? cell(row, column).trim() : "");
	return { date: day, births: text("births"), kitsUsed: text("kits_used") };
}

/** Writes days into the register, each into its own row; a day of which nothing is given gets none. */
export function daysWritten(workbook: Workbook, days: readonly DayTexts[]): DaysWritten {
	const wrong = days.flatMap(({ date, ...texts }) => {
		const words = wrongFor(births, texts.births) ?? wrongFor(kitsUsed, texts.kitsUsed);
		return words === undefined ? [] : [{ date, words }];
	});
	if (wrong.length > 0) return { ok: false, wrong };
	return { ok: true, workbook: days.reduce(withDay, workbook) };
}

function withDay(workbook: Workbook, { date, ...texts }: DayTexts): Workbook {
	const { rows, cell } = textsOf(workbook, recordsSheet);
	const found = rows.findIndex((row) => cell(row, "date").trim() === date);
	// Of a day that is not there yet nothing is said: blanks are what it has already.
	const before = dayTexts(workbook, date);
	if (before.births === texts.births.trim() && before.kitsUsed === texts.kitsUsed.trim())
		return workbook;
	const cells = { date, births: texts.births.trim(), kits_used: texts.kitsUsed.trim() };
	return withRow(workbook, recordsSheet.file, cells, found < 0 ? rows.length : found);
}

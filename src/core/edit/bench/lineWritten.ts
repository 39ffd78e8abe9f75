import type { Column } from "../../column.ts";
import type { Sheet } from "../../sheet.ts";
import type { Workbook } from "../../workbook.ts";
import { wrongFor } from "../notAllowed.ts";
import { withRow } from "../withRow.ts";
import { tableOf } from "../withTexts.ts";

/** What keeps a cell of a line from being written, in words. */
export interface WrongCell {
	readonly column: string;
	readonly words: string;
}

/** The workbook with a line of the record and the row it stands in, or what keeps it from being written. */
export type Written =
	| { readonly ok: true; readonly workbook: Workbook; readonly row: number }
	| { readonly ok: false; readonly wrong: readonly WrongCell[] };

/** The texts of a line by column, as typed. */
export type LineTexts = Readonly<Record<string, string>>;

/**
 * Writes one line of a sheet, every cell of it as its column allows.
 *
 * @param row that takes the texts instead of a new line at the end, where it is still there
 */
export function lineWritten(
	workbook: Workbook,
	sheet: Sheet,
	texts: LineTexts,
	row?: number,
): Written {
	const wrong = Object.entries(sheet.columns).flatMap(([key, column]) => {
		const words = wrongIn(column, texts[key] ?? "");
		return words === undefined ? [] : [{ column: key, words }];
	});
	if (wrong.length > 0) return { ok: false, wrong };
	const { rows } = tableOf(workbook, sheet.file);
	const at = Math.min(row ?? rows.length, rows.length);
	const cells = Object.entries(texts).map(([key, text]) => [key, text.trim()] as const);
	const next = withRow(workbook, sheet.file, Object.fromEntries(cells), at);
	return { ok: true, workbook: next, row: at };
}

/** A blank for which something else stands is as good as a text. */
function wrongIn(column: Column<unknown>, text: string): string | undefined {
	if (text.trim() === "" && column.fallback !== undefined) return undefined;
	return wrongFor(column, text);
}

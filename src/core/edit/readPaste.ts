import { valueIn } from "../outcome.ts";
import { blockCells } from "../read/block/blockCells.ts";
import type { Customs, Question, Rewritten } from "../read/block/blockTable.ts";
import { readBlock } from "../read/block/readBlock.ts";
import { readSettings } from "../read/readSettings.ts";
import type { Sheet } from "../sheet.ts";
import { sheetOf } from "../sheets/sheetOf.ts";
import { unitSheet } from "../sheets/unit.ts";
import { hasTwoMeanings } from "../values/number.ts";
import { lineOf, type TextTable, type Workbook } from "../workbook.ts";
import { type NewText, tableOf, withTexts } from "./withTexts.ts";

/** Pasted texts in the clear form of the files, as far as they could be understood. */
export interface ReadPaste {
	readonly texts: readonly NewText[];
	readonly questions: readonly Question[];
	readonly rewritten: readonly Rewritten[];
}

/**
 * Reads texts that are pasted into one file as a block of their own: numbers and dates by
 * what they tell together, never by what stands in the sheet already.
 *
 * @param asked what the person answered, where they did
 */
export function readPaste(
	workbook: Workbook,
	file: string,
	texts: readonly NewText[],
	asked: Customs = {},
): ReadPaste {
	const sheet = sheetOf(file);
	if (!sheet) return { texts, questions: [], rewritten: [] };
	const after = tableOf(withTexts(workbook, file, texts), file);
	const own = new Map<number, Map<string, string>>();
	for (const { row, column, text } of texts)
		own.set(row, (own.get(row) ?? new Map()).set(column, text));
	const rows = [...own.keys()];
	const table = {
		header: after.header,
		rows: [...own].map(([row, typed]) =>
			after.header.map(
				(key, at) => typed.get(key) ?? (key === "key" ? (textsIn(after, row)[at] as string) : ""),
			),
		),
		lines: rows.map((row) => lineOf(after, row)),
	};
	const { tables, questions, rewritten } = readBlock([{ sheet, table }], asked, yearOf(workbook));
	const [read] = tables as [TextTable];
	const clear = ({ row, column }: NewText) =>
		textsIn(read, rows.indexOf(row))[after.header.indexOf(column)] as string;
	return { texts: texts.map((text) => ({ ...text, text: clear(text) })), questions, rewritten };
}

/** A row that is there. */
function textsIn({ rows }: TextTable, row: number): readonly string[] {
	return rows[row] as readonly string[];
}

/**
 * Typed texts: what its column takes stays as it was typed, and what it does not take is
 * read as a paste of its own, where that leaves nothing to ask and its column then takes it.
 * "28/02/2027" is one day only. "1,000" stays also where a thousand is not allowed: taken for 1, it
 * would be wrong by a factor of 1,000 without a word.
 */
export function readTyped(
	workbook: Workbook,
	file: string,
	texts: readonly NewText[],
): readonly NewText[] {
	const read = readPaste(workbook, file, texts);
	if (read.questions.length > 0 || read.rewritten.length === 0) return texts;
	const sheet = sheetOf(file) as Sheet;
	const refused = refusedWith(workbook, sheet, texts);
	const stillRefused = refusedWith(workbook, sheet, read.texts);
	return texts.map((text, at) =>
		refused.has(placeOf(text)) && !stillRefused.has(placeOf(text)) && !hasTwoMeanings(text.text)
			? (read.texts[at] as NewText)
			: text,
	);
}

/** Where a sheet with these texts in it holds what its columns do not take. */
function refusedWith(
	workbook: Workbook,
	sheet: Sheet,
	texts: readonly NewText[],
): ReadonlySet<string> {
	const table = tableOf(withTexts(workbook, sheet.file, texts), sheet.file);
	return new Set(
		blockCells({ sheet, table })
			.filter(({ text, column }) => !column.value.schema.safeParse(text).success)
			.map(({ row, at }) => placeOf({ row, column: table.header[at] as string })),
	);
}

const placeOf = ({ row, column }: Pick<NewText, "row" | "column">) => `${row} ${column}`;

/** The year that the workbook plans for, by which a year of two digits is understood. */
function yearOf(workbook: Workbook): number | undefined {
	const { settings } = readSettings(workbook.tables[unitSheet.file]);
	const first = valueIn(settings.plan_start);
	return first === undefined ? undefined : Number(first.slice(0, 4));
}

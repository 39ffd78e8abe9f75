import { readFile } from "node:fs/promises";
import { basename } from "node:path";
import { lineBreaks } from "../../core/lineBreaks.ts";
import type { Problem } from "../../core/problem.ts";
import { typedSheets } from "../../core/sheets/typedSheets.ts";
import { LONGEST_CELL, MOST_COLUMNS, tooManyColumns } from "../csvProblems.ts";
import { csvRecords } from "../csvRecords.ts";
import { unknownFile } from "../fileProblems.ts";
import type { Answers } from "../fileQuestion.ts";
import { isClearText } from "../isClearText.ts";
import { readUnits, UNIT_COLUMN } from "../readUnits.ts";
import { sheetNamed } from "../sheetNamed.ts";
import { noUnitColumn, rowWithoutUnit } from "../unitProblems.ts";
import { NotPlain } from "./notPlain.ts";
import { textPieces } from "./textPieces.ts";
import type { Headers, UnitPiles } from "./unitPiles.ts";

export interface Piled {
	readonly headers: Headers;
	readonly problems: readonly Problem[];
}

/**
 * Sorts the rows of a set of many units onto piles, with the room of a piece of a file.
 *
 * Files as this program writes them (UTF-8, commas, numbers and dates in the clear form) go
 * piece by piece. What a mark means in any other is decided for the set as a whole, so such
 * a set is read at once, and needs the room of all of it.
 *
 * @param enough characters of a piece, at least
 */
export async function pileUnits(
	paths: readonly string[],
	piles: UnitPiles,
	answers: Answers,
	enough?: number,
): Promise<Piled> {
	try {
		return await byPieces(paths, piles, answers, enough);
	} catch (trouble) {
		if (!(trouble instanceof NotPlain)) throw trouble;
		await piles.clear();
		return asWhole(paths, piles, answers);
	}
}

async function byPieces(
	paths: readonly string[],
	piles: UnitPiles,
	{ encoding }: Answers,
	enough: number | undefined,
): Promise<Piled> {
	const headers: Record<string, readonly string[]> = {};
	const problems: Problem[] = [];
	if (encoding !== undefined) throw new NotPlain();
	for (const path of paths) {
		const claimed = sheetNamed(basename(path))?.file;
		const sheet = typedSheets.find(({ file }) => file === claimed);
		if (!sheet) problems.push(unknownFile(basename(path)));
		else if (Object.hasOwn(headers, sheet.file)) throw new NotPlain();
		else {
			const read = await pileFile(sheet.file, textPieces(path, enough), piles);
			problems.push(...read.problems);
			if (read.header) headers[sheet.file] = read.header;
		}
	}
	return { headers, problems };
}

async function pileFile(file: string, pieces: AsyncIterable<string>, piles: UnitPiles) {
	const problems: Problem[] = [];
	let head: string | undefined;
	let header: string[] | undefined;
	let linesBefore = 0;
	for await (const piece of pieces) {
		const { records, lineOf } = plainRecords(`${head ?? ""}${piece}`);
		if (head === undefined) {
			// As many columns, in one line, whatever ends the lines of the file.
			head = `${(records[0] ?? []).map(() => "x").join()}\n`;
			const [first = "", ...keys] = (records[0] ?? []).map((key) => key.trim());
			if (first !== UNIT_COLUMN) return { problems: [noUnitColumn(file, UNIT_COLUMN, first)] };
			if (keys.length > MOST_COLUMNS) return { problems: [tooManyColumns(file)] };
			header = keys;
		}
		// The header in front of a later piece is no line of it.
		const before = linesBefore === 0 ? 0 : linesBefore - 1;
		for (let record = 1; record < records.length; record++) {
			const [name = "", ...cells] = records[record] as string[];
			const line = before + lineOf(record);
			if (name.trim() !== "") await piles.add(file, line, name.trim(), cells);
			else if (cells.some((cell) => cell.trim() !== ""))
				problems.push(rowWithoutUnit(file, line, UNIT_COLUMN, [name, ...cells]));
		}
		linesBefore += lineBreaks(piece);
	}
	return { header: header ?? [], problems };
}

/** @throws NotPlain where a record means something only beside the rest of its set */
function plainRecords(text: string) {
	const csv = csvRecords(text);
	const isPlain =
		csv.separator === "," &&
		csv.slips.length === 0 &&
		csv.longestCell <= LONGEST_CELL &&
		!text.includes("\0") &&
		isClearText(csv.tidy);
	if (!isPlain) throw new NotPlain();
	return csv;
}

async function asWhole(
	paths: readonly string[],
	piles: UnitPiles,
	answers: Answers,
): Promise<Piled> {
	const files = await Promise.all(
		paths.map(async (path) => ({ name: basename(path), bytes: await readFile(path) })),
	);
	const { units, problems } = readUnits(files, answers);
	const headers: Record<string, readonly string[]> = {};
	for (const { name, workbook } of units)
		for (const [file, { header, rows, lines }] of Object.entries(workbook.tables)) {
			headers[file] = header;
			for (const [at, cells] of rows.entries())
				await piles.add(file, lines?.[at] ?? 0, name, cells);
		}
	return { headers, problems };
}

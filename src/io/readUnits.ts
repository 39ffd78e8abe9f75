import { lineBreaks } from "../core/lineBreaks.ts";
import type { Problem } from "../core/problem.ts";
import { type ReadBlock, readBlock } from "../core/read/block/readBlock.ts";
import type { Sheet } from "../core/sheet.ts";
import { typedSheets } from "../core/sheets/typedSheets.ts";
import { unitSheet } from "../core/sheets/unit.ts";
import type { TextTable, Workbook } from "../core/workbook.ts";
import {
	LONGEST_CELL,
	longCells,
	MOST_COLUMNS,
	quoteProblem,
	tooManyColumns,
} from "./csvProblems.ts";
import { type CsvRecords, csvRecords } from "./csvRecords.ts";
import { decode } from "./decode.ts";
import { unknownFile } from "./fileProblems.ts";
import { type Answers, type OpenQuestion, questionProblem } from "./fileQuestion.ts";
import { isClearText } from "./isClearText.ts";
import { rewrittenProblem } from "./rewrittenProblem.ts";
import type { Separator } from "./separatorOf.ts";
import { sheetNamed } from "./sheetNamed.ts";
import { noUnitColumn, rowWithoutUnit } from "./unitProblems.ts";
import type { NamedBytes } from "./unzip.ts";

/** First column of every file of a set. */
export const UNIT_COLUMN = "unit_name";

export interface UnitWorkbook {
	readonly name: string;
	readonly workbook: Workbook;
}

export interface ReadUnits {
	/** In the order in which their names first stand in the set. */
	readonly units: readonly UnitWorkbook[];
	readonly problems: readonly Problem[];
	/** Without an answer to these the workbooks are not what the files mean; each is among the problems too. */
	readonly questions: readonly OpenQuestion[];
}

/** The rows of one unit in a file, and the lines they stand in. */
interface Rows {
	readonly rows: string[][];
	readonly lines: number[];
}

interface UnitsFile {
	readonly sheet: Sheet;
	readonly separator: Separator;
	/** Numbers and dates stand in the clear form, as this program writes them. */
	readonly isClear: boolean;
	readonly header: readonly string[];
	readonly rowsOf: ReadonlyMap<string, Rows>;
}

/**
 * Reads the workbooks of many units from one set of CSV files.
 *
 * The files are those of a workbook, each with one more column in front,
 * `unit_name`, which says whose a row is. Every unit gets a workbook with all files
 * of the set, without that column and with its own rows in their order, which need
 * not follow each other; `lines` are those of the set's file. Spaces round a name do
 * not count. A row with text but without a name, a file without the column, and
 * what readCsv finds wrong with a file are problems. Numbers and dates are read by the
 * custom of all files together. Time grows with the bytes alone.
 *
 * @param files each below the longest text the program can hold (some 500 MB)
 * @param answers to what the files may leave open
 */
export function readUnits(files: readonly NamedBytes[], answers: Answers = {}): ReadUnits {
	const problems: Problem[] = [];
	const questions: OpenQuestion[] = [];
	const read = new Map<string, UnitsFile>();
	for (const [name, given] of bySheet(files)) {
		const sheet = typedSheets.find(({ file }) => file === name);
		const chosen = given.find((file) => file.name === answers.files?.[name]);
		const file = given.length === 1 ? given[0] : chosen;
		if (!sheet) problems.push(unknownFile(name));
		else if (file) {
			const { found, problems: wrong } = readUnitsFile(sheet, file.bytes, answers.encoding);
			for (const one of wrong) problems.push(one);
			if (found) read.set(name, found);
		} else questions.push({ about: "file", file: name, names: given.map((one) => one.name) });
	}
	const block = clarified([...read.values()], answers);
	questions.push(...block.questions);
	problems.push(...questions.map(questionProblem), ...rewrittenProblem(block.rewritten));
	const names = new Set([...read.values()].flatMap(({ rowsOf }) => [...rowsOf.keys()]));
	const units = [...names].map((name) => ({ name, workbook: workbookOf(name, read) }));
	return { units, problems, questions };
}

/** Brings numbers and dates of files that other programs have written into the clear form, in place. */
function clarified(files: readonly UnitsFile[], answers: Answers): ReadBlock {
	const blocks = files
		.filter(({ isClear }) => !isClear)
		.map(({ sheet, separator, header, rowsOf }) => {
			const all = [...rowsOf.values()];
			const rows = all.flatMap((own) => own.rows);
			const lines = all.flatMap((own) => own.lines);
			return { sheet, separator, rows, table: { header, rows, lines } };
		});
	const block = readBlock(blocks, answers, yearIn(files));
	block.tables.forEach(({ rows }, at) => {
		rows.forEach((cells, row) => {
			const own = blocks[at]?.rows[row];
			if (own && own !== cells) own.splice(0, own.length, ...cells);
		});
	});
	return block;
}

/** A year that the units plan for, by which one of two digits is understood. */
function yearIn(files: readonly UnitsFile[]): number | undefined {
	const settings = files.find(({ sheet }) => sheet.file === unitSheet.file);
	const [first] = settings?.rowsOf.values() ?? [];
	const start = first?.rows.find((cells) => cells.some((cell) => cell.trim() === "plan_start"));
	const year = start?.map((cell) => /^(\d{4})-/.exec(cell.trim())?.[1]).find(Boolean);
	return year === undefined ? undefined : Number(year);
}

function workbookOf(name: string, files: ReadonlyMap<string, UnitsFile>): Workbook {
	const tables: Record<string, TextTable> = {};
	for (const [file, { header, rowsOf }] of files)
		tables[file] = { header, ...(rowsOf.get(name) ?? { rows: [], lines: [] }) };
	return { tables };
}

/** Files by the sheet that their names say they are, also as programs name them; else by their own name. */
function bySheet(files: readonly NamedBytes[]): Map<string, NamedBytes[]> {
	const named = new Map<string, NamedBytes[]>();
	for (const file of files) {
		const name = sheetNamed(file.name)?.file ?? file.name.toLowerCase();
		named.set(name, [...(named.get(name) ?? []), file]);
	}
	return named;
}

/** Nothing is found in a file that is refused. */
function readUnitsFile(
	sheet: Sheet,
	bytes: Uint8Array,
	encoding: string | undefined,
): { readonly found?: UnitsFile; readonly problems: readonly Problem[] } {
	const nothing = (...problems: readonly Problem[]) => ({ problems });
	const { file } = sheet;
	const decoded = decode(file, bytes, encoding);
	if (!decoded.ok) return nothing(decoded.problem);
	const csv = csvRecords(decoded.text);
	const [first = "", ...header] = (csv.records[0] ?? []).map((key) => key.trim());
	if (first !== UNIT_COLUMN) return nothing(noUnitColumn(file, UNIT_COLUMN, first));
	if (header.length > MOST_COLUMNS) return nothing(tooManyColumns(file));
	const rowsOf = new Map<string, Rows>();
	const problems = recordProblems(file, csv);
	if (decoded.advice) problems.push(decoded.advice);
	let before: string | undefined;
	let own: Rows | undefined;
	for (let record = 1; record < csv.records.length; record++) {
		const cells = csv.records[record] as string[];
		const line = csv.lineOf(record);
		const name = cells[0] as string;
		// Most rows follow others of their unit, which then is not looked up again.
		if (name !== before) own = ownRows(name.trim(), rowsOf);
		before = name;
		if (own) {
			cells.shift();
			own.rows.push(cells);
			own.lines.push(line);
		} else if (cells.some((cell) => cell.trim() !== ""))
			problems.push(rowWithoutUnit(file, line, UNIT_COLUMN, cells));
	}
	const isClear = csv.separator === "," && isClearText(csv.tidy);
	return { found: { sheet, separator: csv.separator, isClear, header, rowsOf }, problems };
}

/** Undefined where there is no name. */
function ownRows(name: string, rowsOf: Map<string, Rows>): Rows | undefined {
	if (name === "") return undefined;
	const known = rowsOf.get(name);
	if (known) return known;
	const own: Rows = { rows: [], lines: [] };
	rowsOf.set(name, own);
	return own;
}

/** Quote marks that do not enclose a cell, and cells beyond LONGEST_CELL; their text is kept. */
function recordProblems(file: string, csv: CsvRecords): Problem[] {
	let line = 1;
	let done = 0;
	const problems = csv.slips.map(({ at, kind }) => {
		line += lineBreaks(csv.tidy.slice(done, at));
		done = at;
		return quoteProblem(file, line, kind, csv.tidy.slice(at + 2, at + 100));
	});
	if (csv.longestCell <= LONGEST_CELL) return problems;
	const [header = [], ...rows] = csv.records;
	const lines = rows.map((_, row) => csv.lineOf(row + 1));
	return [...problems, ...longCells(file, { header, rows, lines })];
}

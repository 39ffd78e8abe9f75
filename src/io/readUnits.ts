import type { Problem } from "../core/problem.ts";
import { typedSheets } from "../core/sheets/typedSheets.ts";
import type { TextTable, Workbook } from "../core/workbook.ts";
import {
	LONGEST_CELL,
	longCells,
	MOST_COLUMNS,
	quoteProblem,
	tooManyColumns,
} from "./csvProblems.ts";
import { type CsvRecords, csvRecords, lineBreaks } from "./csvRecords.ts";
import { decode } from "./decode.ts";
import { doubledFiles, unknownFile } from "./fileProblems.ts";
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
}

/** The rows of one unit in a file, and the lines they stand in. */
interface Rows {
	readonly rows: string[][];
	readonly lines: number[];
}

interface UnitsFile {
	readonly header: readonly string[];
	readonly rowsOf: ReadonlyMap<string, Rows>;
}

const typedFiles = new Set(typedSheets.map(({ file }) => file));

/**
 * Reads the workbooks of many units from one set of CSV files.
 *
 * The files are those of a workbook, each with one more column in front,
 * `unit_name`, which says whose a row is. Every unit gets a workbook with all files
 * of the set, without that column and with its own rows in their order, which need
 * not follow each other; `lines` are those of the set's file. Spaces round a name do
 * not count. A row with text but without a name, a file without the column, and
 * what readCsv finds wrong with a file are problems. Time grows with the bytes alone.
 *
 * @param files UTF-8, each below the longest text the program can hold (some 500 MB)
 */
export function readUnits(files: readonly NamedBytes[]): ReadUnits {
	const problems: Problem[] = [];
	const read = new Map<string, UnitsFile>();
	for (const [name, [file, ...more]] of byName(files)) {
		if (!typedFiles.has(name)) problems.push(unknownFile(name));
		else if (more.length > 0) problems.push(doubledFiles(name, more.length + 1));
		else if (file) {
			const { found, problems: wrong } = readUnitsFile(name, file.bytes);
			for (const one of wrong) problems.push(one);
			if (found) read.set(name, found);
		}
	}
	const names = new Set([...read.values()].flatMap(({ rowsOf }) => [...rowsOf.keys()]));
	const units = [...names].map((name) => ({ name, workbook: workbookOf(name, read) }));
	return { units, problems };
}

function workbookOf(name: string, files: ReadonlyMap<string, UnitsFile>): Workbook {
	const tables: Record<string, TextTable> = {};
	for (const [file, { header, rowsOf }] of files)
		tables[file] = { header, ...(rowsOf.get(name) ?? { rows: [], lines: [] }) };
	return { tables };
}

function byName(files: readonly NamedBytes[]): Map<string, NamedBytes[]> {
	const named = new Map<string, NamedBytes[]>();
	for (const file of files) {
		const name = file.name.toLowerCase();
		named.set(name, [...(named.get(name) ?? []), file]);
	}
	return named;
}

/** Nothing is found in a file that is refused. */
function readUnitsFile(
	file: string,
	bytes: Uint8Array,
): { readonly found?: UnitsFile; readonly problems: readonly Problem[] } {
	const nothing = (...problems: readonly Problem[]) => ({ problems });
	const decoded = decode(file, bytes);
	if (!decoded.ok) return nothing(decoded.problem);
	const csv = csvRecords(decoded.text);
	const [first = "", ...header] = (csv.records[0] ?? []).map((key) => key.trim());
	if (first !== UNIT_COLUMN) return nothing(noUnitColumn(file, UNIT_COLUMN, first));
	if (header.length > MOST_COLUMNS) return nothing(tooManyColumns(file));
	const rowsOf = new Map<string, Rows>();
	const problems = recordProblems(file, csv);
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
	return { found: { header, rowsOf }, problems };
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

import type { Problem } from "../core/problem.ts";
import { computedSheets } from "../core/sheets/computedSheets.ts";
import { problemsSheet } from "../core/sheets/problems.ts";
import { typedSheets } from "../core/sheets/typedSheets.ts";
import type { TextTable, Workbook } from "../core/workbook.ts";
import { readCsv } from "./csv.ts";
import { decode } from "./decode.ts";
import {
	doubledFiles,
	notAWorkbook,
	resultFiles,
	tooLargeFile,
	unknownFile,
} from "./fileProblems.ts";
import { formatProblems } from "./formatProblems.ts";
import { FORMAT } from "./migrated.ts";
import { checkDataPackage, formatOf } from "./readDataPackage.ts";
import { isZip, type NamedBytes, unzip } from "./unzip.ts";
import { MOST_BYTES } from "./zipRefusals.ts";

export interface ReadFiles {
	readonly workbook: Workbook;
	readonly problems: readonly Problem[];
}

/** What is found while the files are read, one after the other. */
interface Found {
	readonly tables: Record<string, TextTable>;
	/** Edition of the file format, where the description names one. */
	format?: number;
}

const DESCRIPTION = "datapackage.json";
const typedFiles = new Set(typedSheets.map(({ file }) => file));
const computedFiles = new Set([...computedSheets, problemsSheet].map(({ file }) => file));

/**
 * Reads a workbook from files as a person hands them over: its CSV files, or a
 * zip of them, with or without `datapackage.json`.
 *
 * Files are known by the last part of their name, capitals or not. A file that
 * cannot be read is a problem and keeps none of the others from being read.
 * The texts stay in the edition they are written in: `migrated` brings them up to date.
 */
export function readFiles(given: readonly NamedBytes[]): ReadFiles {
	const problems: Problem[] = [];
	const files = given.flatMap((file) => {
		if (!isZip(file.bytes) && !/\.zip$/i.test(file.name)) return [file];
		const unzipped = unzip(baseName(file.name), file.bytes);
		problems.push(...unzipped.problems);
		return unzipped.files;
	});
	const byName = new Map<string, NamedBytes[]>();
	for (const file of files.filter(isNoClutter)) {
		const name = baseName(file.name);
		byName.set(name, [...(byName.get(name) ?? []), file]);
	}
	const found: Found = { tables: {} };
	const results: string[] = [];
	for (const name of new Set([DESCRIPTION, ...byName.keys()])) {
		const [file, ...more] = byName.get(name) ?? [];
		if (!file) continue;
		const isNewer = (found.format ?? FORMAT) > FORMAT && name.endsWith(".csv");
		if (computedFiles.has(name) || (isNewer && isResult(file))) results.push(name);
		else if (!typedFiles.has(name) && name !== DESCRIPTION && !isNewer)
			problems.push(unknownFile(name));
		else if (more.length > 0) problems.push(doubledFiles(name, more.length + 1));
		else for (const wrong of readOne(name, file.bytes, found)) problems.push(wrong);
	}
	if (results.length > 0) problems.push(resultFiles(results));
	if (Object.keys(found.tables).length === 0 && problems.every((p) => p.weight === "advice"))
		problems.push(notAWorkbook(given.map(({ name }) => baseName(name))));
	return { workbook: found, problems };
}

/** Reads one file into what was found before, and gives the problems it has. */
function readOne(name: string, bytes: Uint8Array, found: Found): readonly Problem[] {
	if (bytes.length > MOST_BYTES) return [tooLargeFile(name, bytes.length)];
	const decoded = decode(name, bytes);
	if (!decoded.ok) return [decoded.problem];
	if (name === DESCRIPTION) {
		const wrong = checkDataPackage(name, decoded.text);
		if (wrong.length > 0) return wrong;
		const format = formatOf(decoded.text);
		if (format !== FORMAT) found.format = format;
		return formatProblems(format);
	}
	const { table, problems, refused } = readCsv(name, decoded.text);
	if (!refused) found.tables[name] = { ...table, header: table.header.map(keyIn(name)) };
	return problems;
}

/** A column of the format by its plain name: " births" is births. Names of one's own stay as they are. */
function keyIn(name: string): (key: string) => string {
	const columns = typedSheets.find(({ file }) => file === name)?.columns ?? {};
	return (key) => (Object.hasOwn(columns, key.trim()) ? key.trim() : key);
}

/** In the zip of a workbook the results have a folder of their own. */
function isResult({ name }: NamedBytes): boolean {
	return /(^|[/\\])plan[/\\]/i.test(name);
}

/** What operating systems and spreadsheets leave beside files is passed over in silence. */
function isNoClutter({ name }: NamedBytes): boolean {
	return !/(^|\/)(\._[^/]*|\.ds_store|thumbs\.db|desktop\.ini|~\$[^/]*|\.~lock[^/]*)$/i.test(name);
}

function baseName(name: string): string {
	return (name.split(/[/\\]/).at(-1) ?? "").toLowerCase();
}

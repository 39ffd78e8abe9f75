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
import { checkDataPackage } from "./readDataPackage.ts";
import { isZip, type NamedBytes, unzip } from "./unzip.ts";
import { MOST_BYTES } from "./zipRefusals.ts";

export interface ReadFiles {
	readonly workbook: Workbook;
	readonly problems: readonly Problem[];
}

const typedFiles = new Set(typedSheets.map(({ file }) => file));
const computedFiles = new Set([...computedSheets, problemsSheet].map(({ file }) => file));

/**
 * Reads a workbook from files as a person hands them over: its CSV files, or a
 * zip of them, with or without `datapackage.json`.
 *
 * Files are known by the last part of their name, capitals or not. A file that
 * cannot be read is a problem and keeps none of the others from being read.
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
	const tables: Record<string, TextTable> = {};
	const results: string[] = [];
	for (const [name, [file, ...more]] of byName) {
		if (computedFiles.has(name)) results.push(name);
		else if (!typedFiles.has(name) && name !== "datapackage.json") problems.push(unknownFile(name));
		else if (!file || more.length > 0) problems.push(doubledFiles(name, more.length + 1));
		else problems.push(...readOne(name, file.bytes, tables));
	}
	if (results.length > 0) problems.push(resultFiles(results));
	if (Object.keys(tables).length === 0 && problems.every((p) => p.weight === "advice"))
		problems.push(notAWorkbook(given.map(({ name }) => baseName(name))));
	return { workbook: { tables }, problems };
}

/** Reads one file into `tables`, and gives the problems it has. */
function readOne(name: string, bytes: Uint8Array, tables: Record<string, TextTable>) {
	if (bytes.length > MOST_BYTES) return [tooLargeFile(name, bytes.length)];
	const decoded = decode(name, bytes);
	if (!decoded.ok) return [decoded.problem];
	if (name === "datapackage.json") return checkDataPackage(name, decoded.text);
	const { table, problems } = readCsv(name, decoded.text);
	if (problems[0]?.code !== "too-many-rows") tables[name] = table;
	return problems;
}

/** What operating systems and spreadsheets leave beside files is passed over in silence. */
function isNoClutter({ name }: NamedBytes): boolean {
	return !/(^|\/)(\._[^/]*|\.ds_store|thumbs\.db|desktop\.ini|~\$[^/]*|\.~lock[^/]*)$/i.test(name);
}

function baseName(name: string): string {
	return (name.split(/[/\\]/).at(-1) ?? "").toLowerCase();
}

import type { Problem } from "../core/problem.ts";
import { readBlock } from "../core/read/block/readBlock.ts";
import type { TextTable, Workbook } from "../core/workbook.ts";
import { checkDataPackage, formatOf } from "./checkDataPackage.ts";
import { decode } from "./decode.ts";
import { DESCRIPTION_FILE, tellsOfSheets } from "./descriptionFile.ts";
import { editionShown } from "./editionShown.ts";
import { notAWorkbook, tooLargeFile } from "./fileProblems.ts";
import { type Answers, type OpenQuestion, questionProblem } from "./fileQuestion.ts";
import { formatProblems } from "./formatProblems.ts";
import { FoundSheets } from "./foundSheets.ts";
import { HISTORY_FILE, type History } from "./history/historyFile.ts";
import { readHistory } from "./history/readHistory.ts";
import { lastOfPath } from "./lastOfPath.ts";
import { FORMAT } from "./migrated.ts";
import { rewrittenProblem } from "./rewrittenProblem.ts";
import { type Claimant, settledClaim } from "./settledClaim.ts";
import { unpackedFiles } from "./unpackedFiles.ts";
import type { NamedBytes } from "./unzip.ts";
import { MOST_BYTES } from "./zipRefusals.ts";

export interface ReadFiles {
	readonly workbook: Workbook;
	readonly problems: readonly Problem[];
	/** Without an answer to these the workbook is not what its files mean; each is among the problems too. */
	readonly questions: readonly OpenQuestion[];
	/** What the workbook remembers of its saves, where it does. */
	readonly history?: History;
	/** Files of a person's own beside it, that are no sheets; absent where there are none. */
	readonly others?: readonly NamedBytes[];
}

/**
 * Reads a workbook from files as a person hands them over: its CSV files, also as other
 * programs name and write them, spreadsheets with its sheets, or a zip of them, with or
 * without `datapackage.json`.
 *
 * Numbers and dates are read by the custom of all files together. A file that cannot be
 * read is a problem and keeps none of the others from being read. The texts stay in the
 * edition they are written in: `migrated` brings them up to date.
 */
export function readFiles(given: readonly NamedBytes[], answers: Answers = {}): ReadFiles {
	const unpacked = unpackedFiles(given);
	const files = unpacked.files.filter(isNoClutter);
	const problems: Problem[] = [...unpacked.problems];
	const described = readDescription(files, problems);
	const { history, problems: strange } = remembered(files);
	const found = new FoundSheets();
	const together = {
		isOurs: files.some(isDescription),
		isNewer: (described?.format ?? FORMAT) > FORMAT,
		encoding: answers.encoding,
	};
	for (const file of files)
		if (!tellsOfSheets(lastOfPath(file.name))) found.takeFile(file, together);
	for (const sheet of unpacked.sheets) found.takeSheet(sheet);
	found.end(unpacked.empty);
	const { claimants, newer, others } = found;
	const all = settled(
		given,
		{ claimants, newer, described, problems: [...problems, ...strange, ...found.problems] },
		answers,
	);
	return { ...all, ...(history && { history }), ...(others.length > 0 && { others }) };
}

/** Two memories are of two workbooks; their sheets together come from neither. */
function remembered(files: readonly NamedBytes[]): ReturnType<typeof readHistory> {
	const [one, ...more] = files.filter(({ name }) => baseName(name) === HISTORY_FILE);
	return one && more.length === 0 ? readHistory(one.bytes) : { problems: [] };
}

interface Found {
	readonly claimants: ReadonlyMap<string, readonly Claimant[]>;
	readonly newer: Readonly<Record<string, TextTable>>;
	readonly described: Described | undefined;
	readonly problems: readonly Problem[];
}

/** The workbook of what was found: one file a sheet, numbers and dates in the clear form. */
function settled(given: readonly NamedBytes[], found: Found, answers: Answers): ReadFiles {
	const claims = [...found.claimants].map(([sheet, all]) =>
		settledClaim(all, answers.files?.[sheet]),
	);
	const sheets = claims.flatMap((claim) => ("read" in claim ? [claim.read] : []));
	const block = readBlock(sheets, answers);
	const questions = [
		...claims.flatMap((claim): OpenQuestion[] => ("about" in claim ? [claim] : [])),
		...block.questions,
	];
	const tables = Object.fromEntries(
		sheets.map(({ sheet }, at) => [sheet.file, block.tables[at] as TextTable]),
	);
	const { described } = found;
	const format = described && (described.format ?? editionShown(tables));
	const problems = [
		...(format === undefined ? [] : formatProblems(format)),
		...found.problems,
		...questions.map(questionProblem),
		...rewrittenProblem(block.rewritten),
	];
	const workbook = {
		tables: { ...tables, ...found.newer },
		...(format === undefined || format === FORMAT ? {} : { format }),
	};
	if (Object.keys(workbook.tables).length === 0 && problems.every((p) => p.weight === "advice"))
		problems.push(notAWorkbook(given.map(({ name }) => baseName(name))));
	return { workbook, problems, questions };
}

/** A description that can be used. */
interface Described {
	/** Edition of the file format that it names, where it names one. */
	readonly format: number | undefined;
}

function readDescription(files: readonly NamedBytes[], problems: Problem[]): Described | undefined {
	const file = files.find(isDescription);
	if (!file) return undefined;
	const read = describedFormat(file.bytes);
	if ("format" in read) return read;
	problems.push(...read.problems);
	return undefined;
}

function describedFormat(bytes: Uint8Array): Described | { readonly problems: readonly Problem[] } {
	if (bytes.length > MOST_BYTES)
		return { problems: [tooLargeFile(DESCRIPTION_FILE, bytes.length)] };
	const decoded = decode(DESCRIPTION_FILE, bytes, "utf-8");
	if (!decoded.ok) return { problems: [decoded.problem] };
	const wrong = checkDataPackage(DESCRIPTION_FILE, decoded.text);
	return wrong.length > 0 ? { problems: wrong } : { format: formatOf(decoded.text) };
}

/** What operating systems and spreadsheets leave beside files is passed over in silence. */
function isNoClutter({ name }: NamedBytes): boolean {
	return !/(^|\/)(\._[^/]*|\.ds_store|thumbs\.db|desktop\.ini|~\$[^/]*|\.~lock[^/]*)$/i.test(name);
}

function isDescription({ name }: NamedBytes): boolean {
	return baseName(name) === DESCRIPTION_FILE;
}

function baseName(path: string): string {
	return lastOfPath(path).toLowerCase();
}

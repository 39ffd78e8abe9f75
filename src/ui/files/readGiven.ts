import { advice, type Problem, problem } from "../../core/problem.ts";
import { say } from "../../core/say.ts";
import { unitSheet } from "../../core/sheets/unit.ts";
import type { ReadFiles } from "../../io/readFiles.ts";
import { isZip, type NamedBytes } from "../../io/unzip.ts";
import { readAsking } from "./readAsking.ts";
import { bytesOf, type SavedFile } from "./savedFile.ts";

export interface Opened extends ReadFiles {
	/** The files as the person knows them. */
	readonly names: readonly string[];
	/** The zip that all of it came from, where Save may write to it. */
	readonly file?: SavedFile;
	/** Set where it is the very file that this workbook is saved in, and somebody else wrote to it. */
	readonly isOwnFile?: true;
}

const NOTHING: ReadFiles = { workbook: { tables: {} }, problems: [], questions: [] };

/**
 * Reads the files that a person has chosen or dropped.
 *
 * @param only where all is one file: how it can be written again
 * @returns undefined where the person leaves a question unanswered
 */
export async function readGiven(
	files: readonly (File | FileSystemFileHandle)[],
	only?: FileSystemFileHandle,
): Promise<Opened | undefined> {
	const given: NamedBytes[] = [];
	const unread: Problem[] = [];
	for (const file of files)
		try {
			const bytes = await bytesOf(file instanceof File ? file : await file.getFile());
			given.push({ name: file.name, bytes });
		} catch {
			unread.push(unreadable(file.name));
		}
	const found = given.length > 0 ? await readAsking(given) : NOTHING;
	if (!found) return undefined;
	const bytes = given[0]?.bytes;
	const problems = [...unread, ...found.problems];
	const all = { ...found, problems, names: files.map(({ name }) => name) };
	if (!only || !bytes || !isZip(bytes) || !(unitSheet.file in found.workbook.tables)) return all;
	if (isWhole(problems)) return { ...all, file: { handle: only, seen: bytes } };
	return { ...all, problems: [...problems, notWhole(only.name)] };
}

/** Saving over a file whose contents were not all understood would lose them. */
function isWhole(problems: readonly Problem[]): boolean {
	const lost = ["unknown-file", "newer-format", "left-out-entry"];
	return problems.every(({ weight, code }) => weight === "advice" && !lost.includes(code));
}

function notWhole(file: string): Problem {
	return advice(
		{ file, line: null, column: "" },
		{
			code: "not-all-read",
			received: file,
			allowed: say`a workbook that can be read as a whole`,
			message: say`Not everything in ${file} could be read. Save will ask for another file, so that this one stays as it is.`,
		},
	);
}

function unreadable(file: string): Problem {
	return problem(
		{ file, line: null, column: "" },
		{
			code: "unreadable",
			received: file,
			allowed: say`a file that can be read`,
			message: say`The browser could not read ${file}: it was moved or deleted, its stick was taken out, or it may not be read. Choose it again.`,
		},
	);
}

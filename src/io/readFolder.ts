import { readdir, readFile, stat } from "node:fs/promises";
import { basename, join } from "node:path";
import { type Problem, problem } from "../core/problem.ts";
import { say } from "../core/say.ts";
import { tellsOfSheets } from "./descriptionFile.ts";
import { endingIn } from "./fileEndings.ts";
import { tooLargeFile } from "./fileProblems.ts";
import type { Answers } from "./fileQuestion.ts";
import { type ReadFiles, readFiles } from "./readFiles.ts";
import type { NamedBytes } from "./unzip.ts";
import { MOST_BYTES } from "./zipRefusals.ts";

/**
 * Reads a workbook from a folder of CSV files and spreadsheets, or from a zip file.
 *
 * In a folder, only files of text, spreadsheets, `datapackage.json` and `history.json` are looked at: what
 * else lies there, in it or in folders below, is nobody's concern. A file or folder
 * that cannot be read is a problem; nothing is thrown.
 *
 * @param answers to what the files may leave open
 */
export async function readFolder(path: string, answers: Answers = {}): Promise<ReadFiles> {
	const files: NamedBytes[] = [];
	const problems: Problem[] = [];
	const paths = await filesAt(path).catch((error: unknown) => {
		problems.push(unreadable(path, error));
		return undefined;
	});
	if (paths === undefined) return { workbook: { tables: {} }, problems, questions: [] };
	for (const file of paths) {
		const name = basename(file);
		try {
			const { size } = await stat(file);
			if (size > MOST_BYTES) problems.push(tooLargeFile(name, size));
			else files.push({ name, bytes: await readFile(file) });
		} catch (error) {
			problems.push(unreadable(name, error));
		}
	}
	const read = readFiles(files, answers);
	return { ...read, problems: [...problems, ...read.problems] };
}

const SHEET_FILE = endingIn("text", "spreadsheet", "otherProgram", "otherSheet");

async function filesAt(path: string): Promise<string[]> {
	if (!(await stat(path)).isDirectory()) return [path];
	const entries = await readdir(path, { withFileTypes: true });
	const wanted = entries.filter(
		(entry) => !entry.isDirectory() && (SHEET_FILE.test(entry.name) || tellsOfSheets(entry.name)),
	);
	return wanted.map(({ name }) => join(path, name)).sort();
}

function unreadable(file: string, error: unknown): Problem {
	const reason = (error as { code?: string }).code ?? String(error);
	const absent = reason === "ENOENT";
	return problem(
		{ file, line: null, column: "" },
		{
			code: "unreadable",
			received: reason,
			allowed: say`a folder of CSV files, or a zip of them, that can be read`,
			message: absent
				? say`There is no file or folder ${file}.`
				: say`${file} cannot be read (${reason}).`,
		},
	);
}

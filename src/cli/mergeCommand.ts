import { basename, dirname } from "node:path";
import type { Together } from "../core/merge/mergeCopies.ts";
import type { Problem } from "../core/problem.ts";
import { unreadCopy } from "../io/history/unreadCopy.ts";
import { readFolder } from "../io/readFolder.ts";
import { zipTexts } from "../io/zipWorkbook.ts";
import { type Command, PROGRAM_ERROR } from "./command.ts";
import { mergeFiles } from "./mergeFiles.ts";
import { problemLine } from "./problemLine.ts";
import { READING_USAGE, readingArguments } from "./readingArguments.ts";
import { writtenTo } from "./writtenTo.ts";

const USAGE = `Brings two copies of one workbook together, so that no line of either is lost.

  npm run merge -- OURS THEIRS [--base BASE] --out FOLDER-OR-ZIP

OURS, THEIRS         the two copies: folders of CSV files, or zips of them
--base BASE          the workbook that both come from, where they do not remember it
--out FOLDER-OR-ZIP  where both together are written: a folder, or a zip where the name ends so
${READING_USAGE}

A change made in one copy is taken. What both changed differently stands in problems.csv, with
both texts, and OURS is kept.
Ends with 0: together. 1: conflicts, see problems.csv, or a copy that cannot be read, and then
nothing is written. 2: wrong arguments.`;

function readArguments(args: string[]) {
	const given = readingArguments(args, ["base"]);
	const base = given?.options.base;
	if (given?.paths.length !== 2 || base === "") return undefined;
	return { ...given, paths: base === undefined ? given.paths : [...given.paths, base] };
}

/** Brings two copies of a workbook together, as the usage says. */
export const mergeCommand: Command = async (args, { log, error }) => {
	const wanted = readArguments(args);
	if (!wanted) {
		error(USAGE);
		return 2;
	}
	const { paths, out, answers } = wanted;
	const tell = (problems: readonly Problem[], of = "") => {
		for (const problem of problems) error(`${of}${problemLine(problem)}`);
	};
	try {
		const [ours, theirs, base] = await Promise.all(paths.map((path) => readFolder(path, answers)));
		if (!ours || !theirs) throw new Error("two copies are read where two are named");
		const unread = [ours, theirs, ...(base ? [base] : [])].map(unreadCopy);
		if (unread.some(({ length }) => length > 0)) {
			for (const [at, problems] of unread.entries()) tell(problems, `${paths[at]}: `);
			error("Nothing was written: what cannot be read would be missing from both together.");
			return 1;
		}
		const { files, problems, together } = mergeFiles(ours, theirs, base);
		tell(problems);
		const isZip = /\.zip$/i.test(out);
		const written = isZip
			? writtenTo(dirname(out), { [basename(out)]: zipTexts(files) }, error)
			: writtenTo(out, files, error);
		if (!(await written)) return 1;
		log(summary(together, out));
		return problems.some(({ weight }) => weight === "error") ? 1 : 0;
	} catch (trouble) {
		error(PROGRAM_ERROR, trouble);
		return 1;
	}
};

function summary({ changes, conflicts }: Together, out: string): string {
	const from = (side: "ours" | "theirs") => changes.filter((change) => change.from === side).length;
	return `Brought together in ${out}: ${from("ours")} changes from OURS, ${from("theirs")} from THEIRS, ${conflicts.length} conflicts`;
}

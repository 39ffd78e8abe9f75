import { resolve } from "node:path";
import { readFolder } from "../io/readFolder.ts";
import { type Command, PROGRAM_ERROR } from "./command.ts";
import { planFiles } from "./planFiles.ts";
import { problemLine } from "./problemLine.ts";
import { READING_USAGE, readingArguments } from "./readingArguments.ts";
import { writtenTo } from "./writtenTo.ts";

const USAGE = `Makes the plan of a workbook and writes it as CSV files.

  npm run plan -- FOLDER --out FOLDER

FOLDER         the workbook: a folder of CSV files, or a zip of them
--out FOLDER   where the plan is written; made where it does not exist
${READING_USAGE}

Ends with 0: plan made. 1: plan not made, see problems.csv. 2: wrong arguments.`;

function readArguments(args: string[]) {
	const given = readingArguments(args);
	const [from, ...more] = given?.paths ?? [];
	return given && from && more.length === 0 ? { ...given, from } : undefined;
}

/** Makes the plan of a workbook and writes it, as the usage says. */
export const planCommand: Command = async (args, { log, error }, today) => {
	const wanted = readArguments(args);
	if (!wanted) {
		error(USAGE);
		return 2;
	}
	const { from, out, answers } = wanted;
	try {
		const { files, problems, made } = planFiles(
			await readFolder(from, answers),
			resolve(from) === resolve(out),
			today,
		);
		for (const problem of problems) error(problemLine(problem));
		if (!(await writtenTo(out, files, error))) return 1;
		log(`${made ? "Plan made" : "Plan not made"}: ${Object.keys(files).length} files in ${out}`);
		return made ? 0 : 1;
	} catch (trouble) {
		error(PROGRAM_ERROR, trouble);
		return 1;
	}
};

import { resolve } from "node:path";
import { parseArgs } from "node:util";
import { readFolder, writeFiles } from "../io/folder.ts";
import type { Command } from "./command.ts";
import { planFiles } from "./planFiles.ts";
import { problemLine } from "./problemLine.ts";

const USAGE = `Makes the plan of a workbook and writes it as CSV files.

  npm run plan -- FOLDER --out FOLDER

FOLDER         the workbook: a folder of CSV files, or a zip of them
--out FOLDER   where the plan is written; made where it does not exist

Ends with 0: plan made. 1: plan not made, see problems.csv. 2: wrong arguments.`;

function readArguments(args: string[]): { from: string; out: string } | undefined {
	try {
		const options = { out: { type: "string" } } as const;
		const { values, positionals } = parseArgs({ args, options, allowPositionals: true });
		const [from, ...more] = positionals;
		return from && values.out && more.length === 0 ? { from, out: values.out } : undefined;
	} catch {
		return undefined;
	}
}

/** Makes the plan of a workbook and writes it, as the usage says. */
export const planCommand: Command = async (args, { log, error }) => {
	const wanted = readArguments(args);
	if (!wanted) {
		error(USAGE);
		return 2;
	}
	const { from, out } = wanted;
	try {
		const { files, problems, made } = planFiles(
			await readFolder(from),
			resolve(from) === resolve(out),
		);
		for (const problem of problems) error(problemLine(problem));
		try {
			await writeFiles(out, files);
		} catch (trouble) {
			error(`Error: nothing could be written to ${out} (${String(trouble)}).`);
			return 1;
		}
		log(`${made ? "Plan made" : "Plan not made"}: ${Object.keys(files).length} files in ${out}`);
		return made ? 0 : 1;
	} catch (trouble) {
		error("Program error; your data are safe. Please report what follows.", trouble);
		return 1;
	}
};

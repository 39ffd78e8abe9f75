import { resolve } from "node:path";
import { parseArgs } from "node:util";
import { readFolder, writeFiles } from "../io/folder.ts";
import { planFiles } from "./planFiles.ts";
import { problemLine } from "./problemLine.ts";

const USAGE = `Makes the plan of a workbook and writes it as CSV files.

  npm run plan -- FOLDER --out FOLDER

FOLDER         the workbook: a folder of CSV files, or a zip of them
--out FOLDER   where the plan is written; made where it does not exist

Ends with 0: plan made. 1: plan not made, see problems.csv. 2: wrong arguments.`;

function readArguments(): { from: string; out: string } | undefined {
	try {
		const options = { out: { type: "string" } } as const;
		const { values, positionals } = parseArgs({ options, allowPositionals: true });
		const [from, ...more] = positionals;
		return from && values.out && more.length === 0 ? { from, out: values.out } : undefined;
	} catch {
		return undefined;
	}
}

async function main(): Promise<0 | 1 | 2> {
	const wanted = readArguments();
	if (!wanted) {
		console.error(USAGE);
		return 2;
	}
	const { from, out } = wanted;
	const { files, problems, made } = planFiles(
		await readFolder(from),
		resolve(from) === resolve(out),
	);
	for (const problem of problems) console.error(problemLine(problem));
	try {
		await writeFiles(out, files);
	} catch (error) {
		console.error(`Error: nothing could be written to ${out} (${String(error)}).`);
		return 1;
	}
	console.log(
		`${made ? "Plan made" : "Plan not made"}: ${Object.keys(files).length} files in ${out}`,
	);
	return made ? 0 : 1;
}

try {
	process.exitCode = await main();
} catch (error) {
	console.error("Program error; your data are safe. Please report what follows.", error);
	process.exitCode = 1;
}

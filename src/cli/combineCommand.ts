import { readFile } from "node:fs/promises";
import { basename, dirname } from "node:path";
import { combineOrders } from "../core/units/combineOrders.ts";
import { computedCsv } from "../io/computedCsv.ts";
import { readOrders } from "../io/readOrders.ts";
import type { Command } from "./command.ts";
import { problemLine } from "./problemLine.ts";
import { READING_USAGE, readingArguments } from "./readingArguments.ts";
import { writtenTo } from "./writtenTo.ts";

const USAGE = `Adds several units' order files up to one list.

  npm run combine -- ORDER.csv… --out FILE

ORDER.csv…   the order.csv of each unit
--out FILE   where the list is written
${READING_USAGE}

Packs are counted from the summed need, not from the units' packs.
Ends with 0: list made. 1: some file could not be used. 2: wrong arguments.`;

function readArguments(args: string[]) {
	const given = readingArguments(args);
	return given && given.paths.length > 0 ? { ...given, from: given.paths } : undefined;
}

/** Adds order files up to one list, as the usage says. */
export const combineCommand: Command = async (args, { log, error }) => {
	const wanted = readArguments(args);
	if (!wanted) {
		error(USAGE);
		return 2;
	}
	try {
		const files = await Promise.all(
			wanted.from.map(async (path) => ({
				name: nameOf(path, wanted.from),
				bytes: await readFile(path),
			})),
		);
		const { orders, problems } = readOrders(files, wanted.answers);
		for (const problem of problems) error(problemLine(problem));
		const list = { [basename(wanted.out)]: computedCsv(combineOrders(orders)) };
		if (!(await writtenTo(dirname(wanted.out), list, error))) return 1;
		log(`${orders.length} orders added up in ${wanted.out}`);
		return problems.some(({ weight }) => weight === "error") ? 1 : 0;
	} catch (trouble) {
		error(`Error: ${trouble instanceof Error ? trouble.message : String(trouble)}`);
		return 1;
	}
};

/** The file's own name, or its whole path where several files have the same name. */
function nameOf(path: string, all: readonly string[]): string {
	const name = basename(path);
	return all.filter((other) => basename(other) === name).length > 1 ? path : name;
}

import { availableParallelism } from "node:os";
import { join, relative, resolve } from "node:path";
import type { Problem } from "../core/problem.ts";
import { itemNames } from "../core/units/itemNames.ts";
import { storeStock } from "../core/units/storeStock.ts";
import type { IsoDate } from "../core/values/date.ts";
import { begunBeside } from "../io/begunBeside.ts";
import { begunFiles } from "../io/district/begunFiles.ts";
import { pileUnits } from "../io/district/pileUnits.ts";
import { UnitPiles } from "../io/district/unitPiles.ts";
import type { Answers } from "../io/fileQuestion.ts";
import type { Command } from "./command.ts";
import { DistrictRun } from "./district/districtRun.ts";
import { districtTables } from "./district/districtTables.ts";
import { plannedUnits } from "./district/plannedUnits.ts";
import { Progress } from "./district/progress.ts";
import { setFilesIn, unitsTasks } from "./district/unitsTasks.ts";
import { WholeFiles } from "./district/wholeFiles.ts";
import { notWritten } from "./notWritten.ts";
import { problemLine } from "./problemLine.ts";
import { READING_USAGE, readingArguments } from "./readingArguments.ts";

const USAGE = `Plans all units of a district, and adds up what they need.

  npm run units -- FOLDER --out FOLDER

FOLDER         the units' workbooks: folders, zips or spreadsheets, also in folders below; or the
               sheets of many units, with a first column unit_name. Beside them, if you like, names.csv (item, name): which items are the same; and
               district-stock.csv (item, quantity, measure): what the district's store has
--out FOLDER   where the lists are written; made where it does not exist
--workers N    how many units are planned at a time; left out, one for each core
${READING_USAGE}

A unit that cannot be read has a row with the reason. A run that is stopped leaves the lists of
before as they were.
Ends with 0: lists made. 1: no unit could be read, or nothing be written. 2: wrong arguments.`;

const NOTHING_WRITTEN = "Nothing was written: without these lines the sums would be others.";
const MOST_WORKERS = 256;
const STOPS = ["SIGINT", "SIGTERM"] as const;

interface Wanted {
	readonly from: string;
	readonly out: string;
	readonly workers: number;
	readonly answers: Answers;
}

function readArguments(args: string[]): Wanted | undefined {
	const given = readingArguments(args, ["workers"]);
	const [from, ...more] = given?.paths ?? [];
	if (!given || !from || more.length > 0) return undefined;
	const workers = Number(given.options.workers ?? availableParallelism());
	if (!Number.isInteger(workers) || workers < 1 || workers > MOST_WORKERS) return undefined;
	return { from: resolve(from), out: resolve(given.out), workers, answers: given.answers };
}

/** Plans all units of a district, as the usage says. */
export const unitsCommand: Command = async (args, lines, today) => {
	const wanted = readArguments(args);
	if (!wanted) {
		lines.error(USAGE);
		return 2;
	}
	const stopping = new AbortController();
	const stop = () => stopping.abort();
	for (const signal of STOPS) process.once(signal, stop);
	try {
		return await districtPlanned(wanted, lines, today, stopping.signal);
	} catch (trouble) {
		lines.error(inWords(trouble, wanted));
		return 1;
	} finally {
		for (const signal of STOPS) process.off(signal, stop);
	}
};

async function districtPlanned(
	{ from, out, workers, answers }: Wanted,
	{ log, error }: Parameters<Command>[1],
	today: IsoDate | undefined,
	stopped: AbortSignal,
): Promise<0 | 1> {
	const { names, stock, problems, isRead } = await districtTables(from, answers);
	for (const problem of problems) error(problemLine(problem));
	if (!isRead) {
		error(NOTHING_WRITTEN);
		return 1;
	}
	const table = names.rows.map(({ value }) => value);
	const nameOf = itemNames(table);
	const district = { folder: from, names: table, answers, today };
	const { isTTY: isTerminal } = process.stderr;
	const progress = new Progress({
		isTerminal,
		write: (text) => (isTerminal ? process.stderr.write(text) : error(text.trimEnd())),
	});
	const files = await WholeFiles.begin(out, begunFiles());
	const piles = new UnitPiles(await begunBeside(join(out, "piles")));
	try {
		const run = new DistrictRun(files, nameOf);
		const set = await pileUnits(await setFilesIn(from), piles, answers);
		if (set.problems.some(spoilsSums)) {
			for (const problem of set.problems) error(problemLine(problem));
			error(NOTHING_WRITTEN);
			await files.drop();
			return 1;
		}
		await run.tell(set.problems);
		const { headers } = set;
		const tasks = unitsTasks(from, { piles, headers }, out, (all) => progress.expect(all));
		for await (const units of plannedUnits(district, tasks, workers, stopped)) {
			for (const unit of units) await run.add(unit);
			progress.add(units.length);
		}
		progress.end();
		if (stopped.aborted) {
			await files.drop();
			error(
				`Stopped after ${run.units} units: nothing was written, lists of before are as they were.`,
			);
			return 1;
		}
		await run.end(storeStock(stock, nameOf));
		await files.finish();
		const read = run.units - run.unread;
		const unplanned = run.unplanned > 0 ? `, ${run.unplanned} read but not planned` : "";
		log(`${read - run.unplanned} of ${run.units} units planned${unplanned}; lists in ${out}`);
		return run.unread < run.units ? 0 : 1;
	} catch (trouble) {
		await files.drop();
		throw trouble;
	} finally {
		await piles.clear();
	}
}

/** What kept the lists from being made, in plain words. @throws what is no trouble of files */
function inWords(trouble: unknown, { from, out }: Wanted): string {
	const { path, code } = trouble as NodeJS.ErrnoException;
	const isIn = (folder: string) => path !== undefined && !relative(folder, path).startsWith("..");
	if (!isIn(from) || isIn(out)) return notWritten(out, trouble);
	const why = code === "ENOENT" ? "it is not there" : String(trouble);
	return `Error: ${path} could not be read: ${why}. Nothing was written.`;
}

/** A file that a whole set lacks, or a question that it leaves open; a single row without a unit is only named. */
function spoilsSums({ weight, code }: Problem): boolean {
	return weight === "error" && code !== "row-without-unit";
}

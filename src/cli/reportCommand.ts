import { byPlace } from "../core/byPlace.ts";
import { plan } from "../core/plan/plan.ts";
import { monthTable } from "../core/plan/record/monthTable.ts";
import { distinct } from "../core/problem.ts";
import type { IsoDate } from "../core/values/date.ts";
import { daysOfMonth } from "../core/values/isoMonth.ts";
import { computedCsv, problemsCsv } from "../io/computedCsv.ts";
import { migrated } from "../io/migrated.ts";
import type { ReadFiles } from "../io/readFiles.ts";
import { readFolder } from "../io/readFolder.ts";
import { type Command, PROGRAM_ERROR } from "./command.ts";
import { problemLine } from "./problemLine.ts";
import { READING_USAGE, readingArguments } from "./readingArguments.ts";
import { writtenTo } from "./writtenTo.ts";

const USAGE = `Writes the report of a month: what was planned, what was done.

  npm run report -- FOLDER --month YYYY-MM --out FOLDER

FOLDER           the workbook: a folder of CSV files, or a zip of them
--month YYYY-MM  the month, for example 2027-03
--out FOLDER     where month.csv and problems.csv are written; made where it does not exist
${READING_USAGE}

Ends with 0: report written. 1: the workbook could not be read, see problems.csv. 2: wrong arguments.`;

function readArguments(args: string[]) {
	const given = readingArguments(args, ["month"]);
	const [from, ...more] = given?.paths ?? [];
	const month = given?.options.month ?? "";
	if (!given || !from || more.length > 0) return undefined;
	return daysOfMonth(month).length > 0 ? { ...given, from, month } : undefined;
}

/** The files of a report; `made` is false where the workbook is not what its files mean. */
function reportFiles(
	{ workbook, problems: found, questions }: ReadFiles,
	month: string,
	today: IsoDate | undefined,
) {
	const isRead = questions.length === 0 && Object.keys(workbook.tables).length > 0;
	const now = migrated(workbook);
	const planned = isRead ? plan(now, today).problems : [];
	const problems = distinct([...found, ...planned]).sort(byPlace);
	const files: Record<string, string> = { "problems.csv": problemsCsv(problems) };
	if (isRead) files["month.csv"] = computedCsv(monthTable(now, month));
	return {
		files,
		problems: found,
		made: isRead && found.every(({ weight }) => weight === "advice"),
	};
}

/** Writes the report of a month, as the usage says. */
export const reportCommand: Command = async (args, { log, error }, today) => {
	const wanted = readArguments(args);
	if (!wanted) {
		error(USAGE);
		return 2;
	}
	const { from, month, out, answers } = wanted;
	try {
		const { files, problems, made } = reportFiles(await readFolder(from, answers), month, today);
		for (const problem of problems) error(problemLine(problem));
		if (!(await writtenTo(out, files, error))) return 1;
		log(
			`${made ? "Report written" : "Report not made"}: ${Object.keys(files).join(", ")} in ${out}`,
		);
		return made ? 0 : 1;
	} catch (trouble) {
		error(PROGRAM_ERROR, trouble);
		return 1;
	}
};

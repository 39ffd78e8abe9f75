import { byPlace } from "../core/byPlace.ts";
import { noPlan, plan } from "../core/plan/plan.ts";
import { distinct, type Problem } from "../core/problem.ts";
import type { IsoDate } from "../core/values/date.ts";
import { computedCsv, problemsCsv } from "../io/computedCsv.ts";
import { dataPackage } from "../io/dataPackage.ts";
import { computedTables, typedTables } from "../io/describedTable.ts";
import { DESCRIPTION_FILE } from "../io/descriptionFile.ts";
import { migrated } from "../io/migrated.ts";
import type { ReadFiles } from "../io/readFiles.ts";
import { hasHole } from "./hasHole.ts";

interface PlanFiles {
	/** Text of every file to write, by name. */
	readonly files: Readonly<Record<string, string>>;
	/** Of reading and of planning, each once, by file and line. */
	readonly problems: readonly Problem[];
	/** False where the plan, or the workbook it is made from, is not whole: also where a sheet has a hole for what cannot be read. */
	readonly made: boolean;
}

/**
 * Makes the plan of a workbook that was read, and the texts of its files.
 *
 * A file that could not be read counts as a plan not made even where it is
 * optional: without the file the numbers would be others. While a question is open,
 * nothing is planned: a text with two meanings would count with one of them.
 *
 * @param besideWorkbook the results go into the workbook's own folder, so the description names its sheets too
 * @param today as for the plan
 */
export function planFiles(
	{ workbook, problems: found, questions }: ReadFiles,
	besideWorkbook: boolean,
	today?: IsoDate,
): PlanFiles {
	const canPlan = questions.length === 0 && Object.keys(workbook.tables).length > 0;
	const made = canPlan ? plan(migrated(workbook), today) : noPlan;
	// By now those of what was typed, and no others.
	const typed = made.found;
	const problems = distinct([...found, ...made.problems]).sort(byPlace);
	const described = [...(besideWorkbook ? typedTables(workbook) : []), ...computedTables(made)];
	const files: Record<string, string> = {
		"problems.csv": problemsCsv(problems),
		[DESCRIPTION_FILE]: dataPackage(described, besideWorkbook ? workbook.format : undefined),
	};
	for (const table of Object.values(made.tables)) files[table.sheet.file] = computedCsv(table);
	const isRead = found.every(({ weight }) => weight === "advice");
	return { files, problems, made: made.made && isRead && !hasHole(made, typed) };
}

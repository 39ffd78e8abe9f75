import { byPlace } from "../../core/byPlace.ts";
import type { Whose } from "../../core/plan/district/unitLine.ts";
import type { Problem } from "../../core/problem.ts";
import { asNote } from "../../core/read/asNote.ts";
import { headerOf } from "../../core/sheet.ts";
import { problemsSheet } from "../../core/sheets/problems.ts";
import { csvLines } from "../writeCsv.ts";

const problemKeys = headerOf(problemsSheet) as (keyof Problem)[];

/** Problems as lines of units-problems.csv, by file and line. */
export function problemLines({ unit, path }: Whose, problems: readonly Problem[]): string {
	return csvLines(
		[...problems]
			.sort(byPlace)
			.map((found) => [unit, path, ...problemKeys.map((key) => asNote(String(found[key] ?? "")))]),
	);
}

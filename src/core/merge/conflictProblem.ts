import { type Problem, problem } from "../problem.ts";
import { say } from "../say.ts";
import { sheetOf } from "../sheets/sheetOf.ts";
import type { Conflict, Said } from "./conflict.ts";

/** A conflict as a problem: both texts, and whose they are where that is known. */
export function conflictProblem(conflict: Conflict): Problem {
	const { file, line, column, row, ours, theirs, unsure } = conflict;
	const label = sheetOf(file)?.columns[column]?.label ?? column;
	const [our, their] = [saidWords(ours), saidWords(theirs)];
	return problem(
		{ file, line, column },
		{
			code: "conflict",
			received: theirs.text ?? "",
			allowed: say`what one of the two copies says`,
			message:
				column === ""
					? say`${file}, ${row}: one copy changed this row, the other deleted it. Ours: ${our}. Theirs: ${their}. Ours was kept.`
					: unsure
						? say`${file}, ${row}, ${label}: the two copies differ, and nothing tells which of them changed it. Ours: ${our}. Theirs: ${their}. Ours was kept.`
						: say`${file}, ${row}, ${label}: both copies changed it, each differently. Ours: ${our}. Theirs: ${their}. Ours was kept.`,
		},
	);
}

/** What one copy says, by whom and since when where that is known. @example "“8” (Amina, 2027-03-01 10:20)" */
export function saidWords({ text, save }: Said): string {
	const said = text === undefined ? say`deleted` : text.trim() === "" ? say`blank` : say`“${text}”`;
	const known = [save?.by, save?.at.replace("T", " ")].filter(Boolean).join(", ");
	return known === "" ? said : `${said} (${known})`;
}

/** Two different files of one name that belong to no workbook. */
export function twoFiles(file: string): Problem {
	return problem(
		{ file, line: null, column: "" },
		{
			code: "conflict",
			received: file,
			allowed: say`what one of the two copies says`,
			message: say`${file} is not part of a workbook, and the two copies have two different files of this name. Ours was kept.`,
		},
	);
}

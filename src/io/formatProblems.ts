import { advice, nowhere, type Problem } from "../core/problem.ts";
import { say } from "../core/say.ts";
import { DESCRIPTION_FILE } from "./descriptionFile.ts";
import { FORMAT } from "./migrated.ts";

const description = { ...nowhere, file: DESCRIPTION_FILE };

/** What a person should know of a workbook whose files are of another edition than the present one. */
export function formatProblems(format: number): Problem[] {
	if (format === FORMAT) return [];
	const older = format < FORMAT;
	return [
		advice(description, {
			code: older ? "older-format" : "newer-format",
			received: String(format),
			allowed: say`edition ${FORMAT} of the file format`,
			message: older
				? say`This workbook was saved by an earlier Basinbook (edition ${format} of its files; now it is ${FORMAT}). All its text stands as it was. Settings and columns that came since are blank and count with their usual values, so look the plan over before you work by it. Kits are renewed once they are out of date, as before, and a check stands for the end of the round before it, because rounds were not written down then; from now on a check makes no kit's days longer.`
				: say`This workbook was saved by a newer Basinbook (edition ${format} of its files; this one knows ${FORMAT}). What is not known here is kept and saved again, but it does not count in this plan. Work with the newer Basinbook if you can.`,
		}),
	];
}

import { nowhere, type Problem, problem } from "../../core/problem.ts";
import { say } from "../../core/say.ts";
import { DESCRIPTION_FILE } from "../descriptionFile.ts";
import { FORMAT } from "../migrated.ts";
import type { ReadFiles } from "../readFiles.ts";

/**
 * Why a copy cannot be brought together with another one; empty where it can.
 *
 * What could not be read would be missing from both together, and nobody would see it go.
 */
export function unreadCopy({ workbook, problems, questions }: ReadFiles): Problem[] {
	const errors = problems.filter(({ weight }) => weight === "error");
	if (errors.length > 0 || questions.length > 0) return errors;
	const { format = FORMAT } = workbook;
	if (format <= FORMAT) return [];
	return [
		problem(
			{ ...nowhere, file: DESCRIPTION_FILE },
			{
				code: "newer-format",
				received: String(format),
				allowed: say`edition ${FORMAT} of the file format`,
				message: say`This copy was saved by a newer Basinbook (edition ${format} of its files; this one knows ${FORMAT}). Bring the copies together there.`,
			},
		),
	];
}

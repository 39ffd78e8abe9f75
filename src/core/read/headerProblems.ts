import { mayBeBlank } from "../column.ts";
import { advice, type Problem, problem } from "../problem.ts";
import { say } from "../say.ts";
import { headerOf, type Sheet } from "../sheet.ts";
import type { TextTable } from "../workbook.ts";
import { shown } from "./cellProblems.ts";

/** What is wrong with the first line of a file: nothing there, columns missing, unknown or doubled. */
export function headerProblems(sheet: Sheet, table: TextTable): Problem[] {
	const { file } = sheet;
	const header = headerOf(sheet);
	const found: Problem[] = [];
	if (table.header.length === 0)
		return [
			problem(
				{ file, line: 1, column: "" },
				{
					code: "empty-file",
					received: "",
					allowed: say`a first line with the columns ${header.join(", ")}`,
					message: say`${file} is empty; its first line should name the columns ${header.join(", ")}.`,
				},
			),
		];
	for (const [key, column] of Object.entries(sheet.columns))
		if (!table.header.includes(key) && !column.added)
			found.push(
				problem(
					{ file, line: 1, column: key },
					{
						code: "missing-column",
						received: table.header.join(", "),
						allowed: say`the column ${key}`,
						message: mayBeBlank(column)
							? say`${file} has no column ${key}; every row is read as if it were blank there.`
							: say`${file} has no column ${key}; its first line should name it.`,
					},
				),
			);
	table.header.forEach((key, index) => {
		const twice = table.header.indexOf(key) !== index;
		if (header.includes(key) && !twice) return;
		found.push(
			advice(
				{ file, line: 1, column: key },
				{
					code: twice ? "doubled-column" : "unknown-column",
					received: key,
					allowed: header.join(", "),
					message: twice
						? say`${file} has the column ${key} twice; only the first is used, the other is kept.`
						: say`${file} has a column "${shown(key)}" that is not part of this sheet; it is kept and not used.`,
				},
			),
		);
	});
	return found;
}

/** A file of the format that the workbook does not have. */
export function missingFile(file: string): Problem {
	return problem(
		{ file, line: null, column: "" },
		{
			code: "missing-file",
			received: "",
			allowed: say`a file ${file}`,
			message: say`The workbook has no file ${file}.`,
		},
	);
}

import { advice, type Problem, problem } from "../core/problem.ts";
import { shown } from "../core/read/cellProblems.ts";
import { say } from "../core/say.ts";
import { headerOf, type Sheet } from "../core/sheet.ts";
import { MOST_BYTES } from "./zipRefusals.ts";

const whole = (file: string) => ({ file, line: null, column: "" });

export function unknownFile(name: string): Problem {
	const file = shown(name);
	return advice(whole(file), {
		code: "unknown-file",
		received: file,
		allowed: say`the files of a workbook`,
		message: say`${file} is not part of a workbook; it was not read.`,
	});
}

/** A file that is meant as a sheet and cannot be taken for one: leaving it out would change the plan. */
export function unreadSheet(name: string, sheet: Sheet): Problem {
	const file = shown(name);
	const columns = headerOf(sheet).join(", ");
	return problem(whole(file), {
		code: "unread-sheet",
		received: file,
		allowed: say`a first line with the columns ${columns}`,
		message: say`${file} looks like the sheet “${sheet.title}” and was not read: its first line should name the columns ${columns}.`,
	});
}

/** A file of a kind that is not read here, named after a sheet. */
export function otherProgram(name: string, sheet: string): Problem {
	const file = shown(name);
	return problem(whole(file), {
		code: "unread-sheet",
		received: file,
		allowed: say`CSV, .xlsx or .ods`,
		message: say`${file} seems to be the sheet ${sheet} and was not read: open it where it was made, and save it as CSV, .xlsx or .ods.`,
	});
}

/** A spreadsheet's own file without anything in it. */
export function emptySpreadsheet(name: string): Problem {
	const file = shown(name);
	return advice(whole(file), {
		code: "empty-file",
		received: file,
		allowed: say`a spreadsheet with a sheet of a workbook`,
		message: say`${file} has nothing in it.`,
	});
}

export function resultFiles(files: readonly string[]): Problem {
	const list = files.map(shown).join(", ");
	return advice(whole(""), {
		code: "result-file",
		received: list,
		allowed: say`the files that people fill in`,
		message: say`Results of an earlier plan (${list}) were not read: the plan is worked out anew.`,
	});
}

export function tooLargeFile(file: string, bytes: number): Problem {
	return problem(whole(file), {
		code: "too-large",
		received: say`${bytes} bytes`,
		allowed: say`at most ${MOST_BYTES} bytes`,
		message: say`${file} has ${Math.ceil(bytes / 1024 / 1024)} MB; a file may have at most ${MOST_BYTES / 1024 / 1024} MB. It was not read.`,
	});
}

export function notAWorkbook(names: readonly string[]): Problem {
	const received = names.slice(0, 10).join(", ");
	return problem(whole(""), {
		code: "no-workbook",
		received,
		allowed: say`the CSV files of a workbook, or a zip of them`,
		message:
			received === ""
				? say`There is no file of a workbook, so there is nothing to plan from.`
				: say`None of these files (${received}) is of a workbook, so there is nothing to plan from.`,
	});
}

import { computedSheets } from "../core/sheets/computedSheets.ts";
import { problemsSheet } from "../core/sheets/problems.ts";
import { typedSheets } from "../core/sheets/typedSheets.ts";
import { endingIn } from "./fileEndings.ts";

/** The sheet that a file claims to be by its name. */
export interface Claim {
	/** File name of the sheet, for example "records.csv". */
	readonly file: string;
	/** Its own name, and not one that a person or a program made of it. */
	readonly exact: boolean;
}

const TEXT = endingIn("text");
/** What programs add to the name of a second copy, and people to a first one. */
const COPY_MARKS = [
	/\s*\(\d+\)$/,
	/[\s_–—-]*\b(copy|kopie|copie|copia|cópia)(\s*\(?\d+\)?)?$/,
	/^(copy|kopie|copie|copia|cópia)(\s*\(\d+\))?( of| von| de)?[\s_-]+/,
];

const stems = [...typedSheets, ...computedSheets, problemsSheet]
	.map(({ file }) => file.replace(TEXT, ""))
	// The longer one first: "kept-settings" is not some "settings".
	.sort((a, b) => b.length - a.length);

/**
 * Which sheet a file is by its name, capitals or not: its own name, as text of another kind
 * (".txt", ".tsv"), a copy's ("records (1).csv", "records - Copy.csv"), or with something
 * in front ("Ward-records.csv").
 *
 * @param name the last part of a path
 */
export function sheetNamed(name: string): Claim | undefined {
	const lower = name.toLowerCase();
	if (!TEXT.test(lower)) return undefined;
	const stem = withoutMarks(lower.replace(TEXT, "").trim());
	const found =
		stems.find((one) => one === stem) ?? stems.find((one) => stem.search(behind(one)) >= 0);
	if (found === undefined) return undefined;
	const file = `${found}.csv`;
	return { file, exact: file === lower };
}

const OTHER_PROGRAMS = endingIn("otherProgram", "otherSheet");

/** The sheet that a file seems to be which only another program can read; undefined for all other files. */
export function otherProgramsSheet(name: string): string | undefined {
	return OTHER_PROGRAMS.test(name)
		? sheetNamed(name.replace(OTHER_PROGRAMS, ".csv"))?.file
		: undefined;
}

function behind(stem: string): RegExp {
	return new RegExp(`[-_. ]${stem}$`);
}

function withoutMarks(stem: string): string {
	const plain = COPY_MARKS.reduce((text, mark) => text.replace(mark, ""), stem);
	return plain === stem ? stem : withoutMarks(plain);
}

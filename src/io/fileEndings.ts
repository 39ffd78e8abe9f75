/** How the names of files end that may hold a unit's sheets, by what becomes of them. */
const ENDINGS = {
	/** One sheet as text. */
	text: ["csv", "tsv", "txt"],
	/** Spreadsheets that are read. */
	spreadsheet: ["xlsx", "xlsm", "ods"],
	/** Spreadsheets that only another program reads: taken up, so that this is said. */
	otherProgram: ["xls", "xlsb", "numbers", "fods", "sxc"],
	/** One sheet of such a program, or a link to one: no workbook by itself. */
	otherSheet: ["wks", "gsheet"],
	/** Many files as one. */
	zip: ["zip"],
} as const;

type Ending = keyof typeof ENDINGS;

export function fileEndings(...kinds: readonly Ending[]): readonly string[] {
	return kinds.flatMap((kind) => ENDINGS[kind]);
}

/** What matches a name that ends in one of these, in capitals or not. */
export function endingIn(...kinds: readonly Ending[]): RegExp {
	return new RegExp(`\\.(${fileEndings(...kinds).join("|")})$`, "i");
}

/**
 * The same as a browser wants them where it asks for files.
 *
 * @example acceptedEndings("text", "zip") // ".csv,.tsv,.txt,.zip"
 */
export function acceptedEndings(...kinds: readonly Ending[]): string {
	return fileEndings(...kinds)
		.map((ending) => `.${ending}`)
		.join();
}

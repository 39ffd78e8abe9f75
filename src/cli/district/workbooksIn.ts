import { lstat, readdir } from "node:fs/promises";
import { join, relative } from "node:path";
import { endingIn } from "../../io/fileEndings.ts";

/** A file that is a workbook by itself. */
const WORKBOOK_FILE = endingIn("zip", "spreadsheet", "otherProgram");
/** A folder with such a file in it is a workbook. */
const SHEET_FILE = endingIn("text", "spreadsheet", "otherProgram");
/** What systems leave behind, and what a spreadsheet keeps while it is open. */
const CLUTTER = /^(\.|~\$|__MACOSX$)/;

/**
 * The workbooks in a folder, as paths from it, in the order of their paths: zips and
 * spreadsheets, folders with sheets in them, and the same in folders below. A folder with
 * nothing in it is named too, so that its unit is missed.
 *
 * Only the names of one folder and of those around it are held at a time.
 *
 * @param skip a folder that is none of theirs, for example the one that is written to
 */
export async function* workbooksIn(folder: string, skip = ""): AsyncGenerator<string> {
	for (const name of await namesIn(folder)) yield* workbooksAt(folder, join(folder, name), skip);
}

async function* workbooksAt(folder: string, path: string, skip: string): AsyncGenerator<string> {
	if (path === skip) return;
	const own = relative(folder, path).replaceAll("\\", "/");
	if (WORKBOOK_FILE.test(path) && !(await isFolder(path))) yield own;
	else if (await isFolder(path)) {
		const names = await namesIn(path).catch(() => []);
		let found = names.some((name) => SHEET_FILE.test(name));
		if (!found)
			for (const name of names)
				for await (const below of workbooksAt(folder, join(path, name), skip)) {
					found = true;
					yield below;
				}
		else yield own;
		if (!found) yield own;
	}
}

async function namesIn(folder: string): Promise<string[]> {
	const names = await readdir(folder);
	return names.filter((name) => !CLUTTER.test(name)).sort();
}

/** A link to a folder is followed by nobody: it may lead back to where it stands. */
async function isFolder(path: string): Promise<boolean> {
	return (await lstat(path)).isDirectory();
}

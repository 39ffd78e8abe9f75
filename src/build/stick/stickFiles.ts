import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { readFolder } from "../../io/readFolder.ts";
import { zipFiles } from "../../io/zipFiles.ts";
import { zipWorkbook } from "../../io/zipWorkbook.ts";
import { catalogueOf } from "../../messages/catalogueOf.ts";
import { demoIn } from "../../messages/demo/demoIn.ts";
import { demoWordsOf } from "../../messages/demo/demoWordsOf.ts";
import { folderOf, type Language, languages } from "../../messages/languages.ts";
import { reviewStateOf } from "../../messages/reviewStateOf.ts";
import { languagesOnStick } from "./languagesOnStick.ts";
import { goOnScript, openPage, PROGRAM } from "./openPage.ts";
import { programOf } from "./programOf.ts";
import { wordsOnStick } from "./wordsOnStick.ts";

export type Files = Readonly<Record<string, Uint8Array>>;

/** What is asked for: the built site, a workbook to lay beside it, and the version to name. */
export interface StickParts {
	/** Folder of the built site. */
	readonly site: string;
	/** Folder of CSV files. */
	readonly workbook: string;
	readonly version: string;
	/** Languages to bring along although nobody has reviewed them. */
	readonly askedFor?: readonly string[];
}

/** In bytes. */
interface Sizes {
	readonly folder: number;
	readonly zip: number;
}

const bytes = (text: string) => new TextEncoder().encode(text);

/**
 * Everything that lies in the folder for a memory stick, by path: one file to
 * double-click for each language that is built, a workbook beside it, what to read
 * first, the licences, and the program in a folder of its own.
 */
export async function stickFiles({
	site,
	workbook,
	version,
	askedFor = [],
}: StickParts): Promise<Files> {
	const built = languagesOnStick(askedFor).filter((language) =>
		existsSync(join(site, folderOf(language), "index.html")),
	);
	const files: Record<string, Uint8Array> = {
		"LICENCES.txt": forWindows(readFileSync(join(site, "licences.txt"), "utf8")),
		[`${PROGRAM}/goOn.js`]: bytes(goOnScript),
		...inProgram(programOf(site, built)),
	};
	for (const language of built) {
		const words = wordsOnStick[language];
		files[words.demoFile] = await workbookZip(workbook, language);
		files[words.openFile] = bytes(openPage(language, words, folderOf(language)));
	}
	// Once to learn the size, which the text itself is part of, and once to state it.
	for (const _ of ["learn", "state"]) {
		const sizes = { folder: sizeOf(files), zip: zipFiles(files).length };
		for (const language of built)
			files[wordsOnStick[language].readMeFile] = forWindows(readMe(language, version, sizes));
	}
	return files;
}

/** What to read first; where nobody has reviewed the language, followed by the same in English. */
function readMe(language: Language, version: string, { folder, zip }: Sizes): string {
	const size = { folder: megabytes(folder, language), zip: megabytes(zip, language) };
	const words = catalogueOf(language);
	const own = wordsOnStick[language].readMe(version, size, (button) => words.get(button) ?? button);
	if (reviewStateOf(language) !== "not reviewed") return own;
	return `${own}\n${"-".repeat(72)}\n\n${readMe(languages[0].code, version, { folder, zip })}`;
}

function inProgram(site: Files): Files {
	return Object.fromEntries(
		Object.entries(site).map(([path, content]) => [`${PROGRAM}/${path}`, content]),
	);
}

async function workbookZip(folder: string, language: Language): Promise<Uint8Array> {
	const { workbook, problems } = await readFolder(folder);
	if (problems.length > 0) throw new Error(problems.map(({ message }) => message).join("\n"));
	const words = language === languages[0].code ? {} : demoWordsOf(language);
	const tables = Object.entries(workbook.tables).map(([file, table]) => [
		file,
		demoIn(file, table, (kind, text) => words[kind]?.[text] || text),
	]);
	return zipWorkbook({ ...workbook, tables: Object.fromEntries(tables) });
}

/** Bytes of all files together. */
export function sizeOf(files: Files): number {
	return Object.values(files).reduce((sum, { length }) => sum + length, 0);
}

/** Rounded up, so that what is said to fit fits. */
export function megabytes(size: number, language: Language): string {
	const number = new Intl.NumberFormat(language, { minimumFractionDigits: 1 });
	return `${number.format(Math.ceil(size / 100_000) / 10)}${wordsOnStick[language].megabytes}`;
}

/** Old Windows editors show a text right only with their own line ends and a byte-order mark. */
function forWindows(text: string): Uint8Array {
	return bytes(`\uFEFF${text.replace(/^\uFEFF/, "").replaceAll("\n", "\r\n")}`);
}

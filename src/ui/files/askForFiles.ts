import { advice, type Problem, problem } from "../../core/problem.ts";
import { say } from "../../core/say.ts";
import { unitSheet } from "../../core/sheets/unit.ts";
import type { ReadFiles } from "../../io/readFiles.ts";
import { isZip, type NamedBytes } from "../../io/unzip.ts";
import { askWhatToOpen, canWriteFiles } from "./askWhereToSave.ts";
import { pickFiles } from "./pickFiles.ts";
import { readAsking } from "./readAsking.ts";
import { bytesOf, type SavedFile } from "./savedFile.ts";

export interface Opened extends ReadFiles {
	/** The files as the person knows them. */
	readonly names: readonly string[];
	/** The zip that all of it came from, where Save may write to it. */
	readonly file?: SavedFile;
	/** Set where it is the very file that this workbook is saved in, and somebody else wrote to it. */
	readonly isOwnFile?: true;
}

type Listener = (opened: Opened) => void;

/** Asks the person for CSV files or a saved workbook. */
export async function askForFiles(opened: Listener): Promise<void> {
	if (!canWriteFiles())
		return pickFiles(".csv,.tsv,.txt,.xlsx,.ods,.zip,.json", (files) => void read(files, opened));
	const handles = (await askWhatToOpen()) ?? [];
	const [handle, ...more] = handles;
	await read(handles, opened, more.length === 0 ? handle : undefined);
}

/** Takes files that are dropped anywhere on the page. */
export function takeDroppedFiles(page: HTMLElement, opened: Listener): void {
	const carriesFiles = (event: DragEvent) => event.dataTransfer?.types.includes("Files") ?? false;
	page.addEventListener("dragover", (event) => {
		if (!carriesFiles(event)) return;
		event.preventDefault();
		page.dataset.drop = say`Drop the workbook or its sheets here`;
		page.classList.add("dropping");
	});
	page.addEventListener("dragleave", () => page.classList.remove("dropping"));
	page.addEventListener("drop", (event) => {
		if (!carriesFiles(event)) return;
		event.preventDefault();
		page.classList.remove("dropping");
		void read([...(event.dataTransfer?.files ?? [])], opened);
	});
}

const NOTHING: ReadFiles = { workbook: { tables: {} }, problems: [], questions: [] };

/** @param only where all is one file: how it can be written again */
async function read(
	files: readonly (File | FileSystemFileHandle)[],
	opened: Listener,
	only?: FileSystemFileHandle,
): Promise<void> {
	if (files.length === 0) return;
	const given: NamedBytes[] = [];
	const unread: Problem[] = [];
	for (const file of files)
		try {
			const bytes = await bytesOf(file instanceof File ? file : await file.getFile());
			given.push({ name: file.name, bytes });
		} catch {
			unread.push(unreadable(file.name));
		}
	const found = given.length > 0 ? await readAsking(given) : NOTHING;
	if (!found) return;
	const bytes = given[0]?.bytes;
	const problems = [...unread, ...found.problems];
	const all = { ...found, problems, names: files.map(({ name }) => name) };
	if (!only || !bytes || !isZip(bytes) || !(unitSheet.file in found.workbook.tables))
		return opened(all);
	if (isWhole(problems)) return opened({ ...all, file: { handle: only, seen: bytes } });
	opened({ ...all, problems: [...problems, notWhole(only.name)] });
}

/** Saving over a file whose contents were not all understood would lose them. */
function isWhole(problems: readonly Problem[]): boolean {
	const lost = ["unknown-file", "newer-format", "left-out-entry"];
	return problems.every(({ weight, code }) => weight === "advice" && !lost.includes(code));
}

function notWhole(file: string): Problem {
	return advice(
		{ file, line: null, column: "" },
		{
			code: "not-all-read",
			received: file,
			allowed: say`a workbook that can be read as a whole`,
			message: say`Not everything in ${file} could be read. Save will ask for another file, so that this one stays as it is.`,
		},
	);
}

function unreadable(file: string): Problem {
	return problem(
		{ file, line: null, column: "" },
		{
			code: "unreadable",
			received: file,
			allowed: say`a file that can be read`,
			message: say`The browser could not read ${file}: it was moved or deleted, its stick was taken out, or it may not be read. Choose it again.`,
		},
	);
}

import { say } from "../../core/say.ts";
import { acceptedEndings } from "../../io/fileEndings.ts";
import { askWhatToOpen, canWriteFiles } from "./askWhereToSave.ts";
import { bringReaders } from "./bringReaders.ts";
import { pickFiles } from "./pickFiles.ts";
import type { Opened } from "./readGiven.ts";

type Listener = (opened: Opened) => void;

/** With the sheets' description and history. */
const FILES = `${acceptedEndings("text", "spreadsheet", "zip")},.json`;

/** Asks the person for CSV files or a saved workbook. */
export async function askForFiles(opened: Listener): Promise<void> {
	if (!canWriteFiles()) return pickFiles(FILES, (files) => void read(files, opened));
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

async function read(
	files: readonly (File | FileSystemFileHandle)[],
	opened: Listener,
	only?: FileSystemFileHandle,
): Promise<void> {
	if (files.length === 0) return;
	const its = await bringReaders();
	const given = await its?.readGiven(files, only);
	if (given) opened(given);
}

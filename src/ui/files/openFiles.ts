import type { Problem } from "../../core/problem.ts";
import type { Workbook } from "../../core/workbook.ts";
import { readFiles } from "../../io/readFiles.ts";
import { el } from "../dom/el.ts";

export interface Opened {
	readonly workbook: Workbook;
	readonly problems: readonly Problem[];
}

type Listener = (opened: Opened) => void;

/** Asks the person for CSV files or a saved workbook. */
export function askForFiles(opened: Listener): void {
	const picker = el("input", { type: "file", multiple: true, accept: ".csv,.zip,.json" });
	picker.addEventListener("change", () => read(picker.files, opened));
	picker.click();
}

/** Takes files that are dropped anywhere on the page. */
export function takeDroppedFiles(page: HTMLElement, opened: Listener): void {
	const carriesFiles = (event: DragEvent) => event.dataTransfer?.types.includes("Files") ?? false;
	page.addEventListener("dragover", (event) => {
		if (!carriesFiles(event)) return;
		event.preventDefault();
		page.classList.add("dropping");
	});
	page.addEventListener("dragleave", () => page.classList.remove("dropping"));
	page.addEventListener("drop", (event) => {
		if (!carriesFiles(event)) return;
		event.preventDefault();
		page.classList.remove("dropping");
		read(event.dataTransfer?.files, opened);
	});
}

async function read(list: FileList | null | undefined, opened: Listener): Promise<void> {
	const files = await Promise.all(
		[...(list ?? [])].map(async (file) => ({
			name: file.name,
			bytes: new Uint8Array(await file.arrayBuffer()),
		})),
	);
	if (files.length > 0) opened(readFiles(files));
}

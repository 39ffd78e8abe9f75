import { el } from "../dom/el.ts";

/** Asks the person for files of some kinds. @param accept as a file field has it, for example ".csv,.zip" */
export function pickFiles(accept: string, picked: (files: readonly File[]) => void): void {
	const picker = el("input", { type: "file", multiple: true, accept });
	picker.addEventListener("change", () => picked([...(picker.files ?? [])]));
	picker.click();
}

/** Asks the person for a folder, and gives all files in it and in folders below. */
export function pickFolder(picked: (files: readonly File[]) => void): void {
	const picker = el("input", { type: "file", webkitdirectory: true });
	picker.addEventListener("change", () => picked([...(picker.files ?? [])]));
	picker.click();
}

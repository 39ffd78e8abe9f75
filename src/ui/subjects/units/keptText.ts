import type { Sheet } from "../../../core/sheet.ts";

/** What the browser keeps of the district's own tables, by the name of their file. */
export function keptText({ file }: Sheet): string {
	try {
		return localStorage.getItem(keyOf(file)) ?? "";
	} catch {
		return "";
	}
}

export function keepText({ file }: Sheet, text: string): void {
	try {
		localStorage.setItem(keyOf(file), text);
	} catch {
		// A browser that keeps nothing begins empty next time.
	}
}

function keyOf(file: string): string {
	return `basinbook-district-${file}`;
}

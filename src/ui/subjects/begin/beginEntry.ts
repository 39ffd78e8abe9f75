import type { Column } from "../../../core/column.ts";
import { say } from "../../../core/say.ts";
import type { Workbook } from "../../../core/workbook.ts";

/** One of the few things that a first plan needs: read from the sheets and written into them. */
export interface BeginEntry {
	readonly key: string;
	readonly label: string;
	readonly help: string;
	readonly control: "text" | "date" | "choice" | "proposal";
	/** What may be chosen, with its words; of a choice only. */
	readonly options?: readonly (readonly [value: string, words: string])[];
	/** What holds while nothing is entered; absent where the plan waits for it. */
	readonly blank?: string;
	unit(workbook: Workbook): string;
	allowed(workbook: Workbook): string;
	/** What stands in the sheets now; "" where nothing does. */
	read(workbook: Workbook): string;
	/** The workbook with a text entered, or words on what is wrong with it. */
	write(workbook: Workbook, text: string): Workbook | string;
}

/** What is wrong with a text for a cell; undefined where nothing is. */
export function wrongFor(column: Column<unknown>, text: string): string | undefined {
	if (column.value.schema.safeParse(text).success) return undefined;
	return notAllowed(column.label, text, column.value.allowed);
}

export function notAllowed(label: string, text: string, allowed: string): string {
	return text.trim() === ""
		? say`${label} is blank; allowed is ${allowed}.`
		: say`${label}: “${text}” was found; allowed is ${allowed}.`;
}

/** Whether an entry stands in the workbook in a way that is understood. */
export function isGiven(entry: BeginEntry, workbook: Workbook): boolean {
	const text = entry.read(workbook);
	return text !== "" && typeof entry.write(workbook, text) !== "string";
}

import type { Column } from "../../column.ts";
import type { Workbook } from "../../workbook.ts";

/** One of the few things that a first plan needs: read from the sheets and written into them. */
export interface BeginEntry {
	readonly key: string;
	readonly label: string;
	readonly help: string;
	/** What may be chosen, with its words; of a choice only. */
	readonly options?: readonly (readonly [value: string, words: string])[];
	/** The column whose default holds while nothing is entered; absent where the plan waits for it. */
	readonly defaultOf?: Column<unknown>;
	/** False where this unit does not need it; asked of every unit where absent. */
	isAsked?(workbook: Workbook): boolean;
	unit(workbook: Workbook): string;
	allowed(workbook: Workbook): string;
	/** What stands in the sheets now; "" where nothing does. */
	read(workbook: Workbook): string;
	/** The workbook with a text entered, or words on what is wrong with it. */
	write(workbook: Workbook, text: string): Workbook | string;
}

/** Whether an entry stands in the workbook in a way that is understood. */
export function isGiven(entry: BeginEntry, workbook: Workbook): boolean {
	const text = entry.read(workbook);
	return text !== "" && typeof entry.write(workbook, text) !== "string";
}

/** Whether an entry is asked of this unit. */
export function isAsked(entry: BeginEntry, workbook: Workbook): boolean {
	return entry.isAsked?.(workbook) ?? true;
}

/** Name of the file beside the sheets in which a workbook remembers where it comes from. */
export const HISTORY_FILE = "history.json";

/** Edition of that file; another one is not used. */
export const HISTORY_EDITION = 1;

/** Rows first saved together and standing together: the save by its place in the list, the first one's number, how many. */
export type Run = readonly [save: number, first: number, count: number];

/** What the file holds of one sheet. Saves stand for their place in the list of saves. */
export interface SheetHistory {
	/** Of the sheet as it was saved; where it is another one now, the rest is not about it. */
	readonly digest: string;
	/** The rows in their order. */
	readonly rows: readonly Run[];
	/** Cells changed later: the first row (from 0), how many rows, the column, the save. */
	readonly changed: readonly (readonly [
		row: number,
		count: number,
		column: string,
		save: number,
	])[];
	/** Rows deleted: where they came from, and the save in which they were. */
	readonly gone: readonly (readonly [...Run, goneIn: number])[];
}

/** The whole file. */
export interface History {
	readonly basinbook_history: typeof HISTORY_EDITION;
	/** Of the rest; where that is another one, it is damaged. Files of before have none. */
	readonly digest?: string;
	/** Every save that led here: its id, when (as that computer's clock had it) and by whom, "" where nobody knows. */
	readonly saves: readonly (readonly [id: string, at: string, by: string])[];
	readonly sheets: Readonly<Record<string, SheetHistory>>;
}

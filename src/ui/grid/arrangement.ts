import { say } from "../../core/say.ts";
import type { GridModel } from "./gridModel.ts";

/** In which order the rows of a sheet are looked at, and which of them. The sheet itself stays as it is. */
export interface Arrangement {
	/** Key of the column to sort by; "" for the order of the file. */
	readonly by: string;
	readonly descending: boolean;
	/** Key of the column that must contain the text; "" for any column. */
	readonly among: string;
	readonly contains: string;
}

/** All rows, in the order of the file. */
export const asInFile: Arrangement = { by: "", descending: false, among: "", contains: "" };

export function isAsInFile({ by, contains }: Arrangement): boolean {
	return by === "" && contains.trim() === "";
}

/** Says what is shown: "12 of 40 rows shown, sorted by Expiry, ascending"; "" where nothing is arranged. */
export function arrangementWords(
	model: GridModel,
	arrangement: Arrangement,
	shown: number,
): string {
	if (isAsInFile(arrangement)) return "";
	const all = model.rowCount - (model.openEnd ? 1 : 0);
	const rows = model.openEnd ? shown - 1 : shown;
	const column = model.columns.find(({ key }) => key === arrangement.by);
	if (!column) return say`${rows} of ${all} rows shown`;
	return arrangement.descending
		? say`${rows} of ${all} rows shown, sorted by ${column.label}, descending`
		: say`${rows} of ${all} rows shown, sorted by ${column.label}, ascending`;
}

import { folded } from "./folded.ts";
import type { GridModel } from "./gridModel.ts";

/** A cell as it is searched: by what is read and by what it holds, so "Mon 1 Mar" is also found by its date. */
export function foldedCell(model: GridModel, row: number, column: number): string {
	const { text, raw } = model.cell(row, column);
	if (text === "") return "";
	const held = raw ?? model.value?.(row, column);
	return folded(typeof held === "string" && held !== text ? `${text}\n${held}` : text);
}

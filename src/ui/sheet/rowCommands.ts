import { withEmptyRow } from "../../core/edit/withEmptyRow.ts";
import { withoutRows } from "../../core/edit/withoutRows.ts";
import { tableOf } from "../../core/edit/withTexts.ts";
import { say } from "../../core/say.ts";
import { isTyped } from "../../core/sheets/sheetOf.ts";
import { unitSheet } from "../../core/sheets/unit.ts";
import { lineOf } from "../../core/workbook.ts";
import type { CellRange } from "../grid/cellRange.ts";
import { filled } from "../grid/filled.ts";
import type { Store } from "../state/store.ts";
import type { Desk } from "./desk.ts";

/** What can be done with the selected cells, each one step that undo takes back. Each gives what it did in words. */
export type RowCommands = Readonly<
	Record<"fill" | "insert" | "delete", (block: CellRange) => string>
>;

/** True for a sheet to which a person may add rows. */
export function hasOwnRows(file: string): boolean {
	return isTyped(file) && file !== unitSheet.file;
}

/** The commands of one sheet on the screen. */
export function rowCommands(file: string, desk: Desk, store: Store): RowCommands {
	const rows = () => tableOf(store.state.workbook, file).rows.length;
	return {
		fill(block) {
			const { model } = desk.shown;
			if (!model || file === unitSheet.file)
				return say`Settings are not filled down: each has its own value.`;
			const texts = filled(model, block, desk.cells.fills);
			if (texts.length === 0)
				return say`Nothing was filled: the cells are computed, or hold the same already, or have none before them.`;
			if (texts.every(({ text }) => text.trim() === ""))
				return say`Nothing was filled: the cell to copy is blank.`;
			desk.edit(texts);
			return texts.length === 1 ? say`1 cell was filled.` : say`${texts.length} cells were filled.`;
		},
		insert({ top }) {
			if (!hasOwnRows(file)) return say`Rows of this sheet are not yours to add or delete.`;
			if (desk.shown.words !== "")
				return say`Nothing was inserted: among sorted or chosen rows an empty one has no place. Show all rows in the order of the file first.`;
			const at = Math.min(top, rows());
			store.edit(withEmptyRow(store.state.workbook, file, at));
			const line = lineOf(tableOf(store.state.workbook, file), at);
			return say`Line ${line} is a new, empty row.`;
		},
		delete({ top, bottom }) {
			if (!hasOwnRows(file)) return say`Rows of this sheet are not yours to add or delete.`;
			const last = rows();
			const gone = new Set<number>();
			for (let seen = top; seen <= bottom; seen++)
				if (desk.shown.rowOf(seen) < last) gone.add(desk.shown.rowOf(seen));
			if (gone.size === 0) return say`There is no row to delete here.`;
			store.edit(withoutRows(store.state.workbook, file, gone));
			return gone.size === 1
				? say`1 row was deleted; Undo brings it back.`
				: say`${gone.size} rows were deleted; Undo brings them back.`;
		},
	};
}

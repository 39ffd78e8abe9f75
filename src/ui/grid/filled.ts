import type { CellRange } from "./cellRange.ts";
import type { CellText, GridModel } from "./gridModel.ts";

/** Which way cells are filled: down the rows of a sheet, or right along the days of the plan. */
export type FillWay = "down" | "right";

/**
 * The texts with which a block is filled: the first cell of each column (of each row,
 * to the right) into the others. A block one cell deep takes the cell before it.
 * Locked cells are neither taken nor filled, and cells that hold the text already are left out.
 */
export function filled(model: GridModel, block: CellRange, way: FillWay): CellText[] {
	const { top, left, bottom, right } = block;
	const down = way === "down";
	const start = down ? top : left;
	const first = start === (down ? bottom : right) ? start - 1 : start;
	if (first < 0) return [];
	const texts: CellText[] = [];
	for (let row = down ? first + 1 : top; row <= bottom; row++)
		for (let column = down ? left : first + 1; column <= right; column++) {
			const source = down ? model.cell(first, column) : model.cell(row, first);
			const target = model.cell(row, column);
			const text = source.raw ?? source.text;
			const differs = text !== (target.raw ?? target.text);
			if (source.kind === "typed" && target.kind === "typed" && differs)
				texts.push({ row, column, text });
		}
	return texts;
}

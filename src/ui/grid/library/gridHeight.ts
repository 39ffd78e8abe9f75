import { textScale } from "../../dom/textScale.ts";
import type { GridModel } from "../gridModel.ts";

const ROOM_FOR_SCROLLBAR_PX = 18;
const SHORTEST_PX = 200;

/** Pixels: all rows, or that share of the screen's height which the grid may take at most. */
export function gridHeight(model: GridModel, tallest: number): number {
	let rows = model.headerHeight + ROOM_FOR_SCROLLBAR_PX;
	for (let row = 0; row < model.rowCount && rows < window.innerHeight; row++)
		rows += model.rowHeight(row);
	const scale = textScale();
	const most = Math.max(SHORTEST_PX * scale, Math.round(window.innerHeight * tallest));
	return Math.min(rows * scale, most);
}

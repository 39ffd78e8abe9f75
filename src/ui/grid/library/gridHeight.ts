import { textScale } from "../../dom/textScale.ts";
import type { GridModel } from "../gridModel.ts";

const ROOM_FOR_SCROLLBAR_PX = 18;
const SHORTEST_PX = 200;
/** A last row that would be cut in two is shown whole for so much more. */
const SLACK_PX = 36;

/** Pixels: all rows, or that share of the screen's height which the grid may take at most. */
export function gridHeight(model: GridModel, tallest: number): number {
	let rows = model.headerHeight + ROOM_FOR_SCROLLBAR_PX;
	for (let row = 0; row < model.rowCount && rows < window.innerHeight; row++)
		rows += model.rowHeight(row);
	const scale = textScale();
	const most = Math.max(SHORTEST_PX * scale, Math.round(window.innerHeight * tallest));
	return rows * scale <= most + SLACK_PX ? rows * scale : most;
}

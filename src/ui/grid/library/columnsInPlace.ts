import type { GridModel } from "../gridModel.ts";

/** Of the margin with the rows' numbers. */
export const ROW_NAMES_PX = 44;
/** What a column of figures takes: so much must be left for the others to scroll by in. */
const BESIDE_PX = 100;

/**
 * How many columns stay in place when the others scroll: the first, unless it would leave them no room.
 *
 * @param room pixels that the grid has across; 0 where it is not shown yet
 */
export function columnsInPlace({ columns, rowName }: GridModel, room: number): number {
	const taken = (columns[0]?.width ?? 0) + (rowName ? ROW_NAMES_PX : 0);
	return room === 0 || taken + BESIDE_PX <= room ? Math.min(1, columns.length) : 0;
}

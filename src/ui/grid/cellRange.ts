/** A block of cells of a grid, both ends included. */
export interface CellRange {
	readonly top: number;
	readonly left: number;
	readonly bottom: number;
	readonly right: number;
}

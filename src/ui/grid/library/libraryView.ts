import type Handsontable from "handsontable";

/** One drawing of the cells: all of them, or the copy of those that stay in place. */
export interface DrawnTable {
	readonly TABLE: HTMLTableElement;
	/** An element, or a number where the cell is not drawn. */
	getCell(at: { row: number; col: number }): HTMLElement | number | undefined;
	getColumnHeader(column: number): HTMLElement | undefined;
	getRowHeader(row: number): HTMLElement | null | undefined;
	getRenderedRowsCount(): number;
	getRenderedColumnsCount(): number;
	/** Null where nothing was ever drawn. */
	readonly rowFilter: Filter | null;
	readonly columnFilter: Filter | null;
	refreshSelections(onlyMoved: boolean): void;
}

/** Which row, or column, of the sheet is drawn at a place. */
export interface Filter {
	renderedToSource(at: number): number;
}

interface Overlay {
	readonly clone?: { readonly wtTable: DrawnTable };
	/** Of the overlay over the rest. */
	redrawAllSelectionsBorders?: () => void;
}

/** The library's own view, of which its types say nothing; it stays as it is, because the library is pinned. */
export interface LibraryView {
	render(): void;
	readonly wt: {
		readonly wtTable: DrawnTable;
		readonly wtOverlays: Readonly<Record<`${Place}Overlay`, Overlay>>;
	};
}

type Place = "top" | "left" | "topLeftCorner" | "bottom" | "bottomLeftCorner";

/** A grid, with what of it is nobody's business but this adapter's. */
export type Hot = Handsontable & {
	readonly view: LibraryView;
	/** Set where cells are to be drawn anew, and not only the selection. */
	forceFullRender: boolean;
};

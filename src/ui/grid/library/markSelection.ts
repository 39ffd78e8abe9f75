import type { DrawnTable, Filter, Hot } from "./libraryView.ts";
import { rangeOf } from "./rangeOf.ts";

/** Of a cell of the block: at which of its edges it lies. */
const EDGES = { top: "at-top", bottom: "at-bottom", left: "at-left", right: "at-right" } as const;
const HEADER = "ht__highlight";
const MARKS = ["current", "area", HEADER, ...Object.values(EDGES)];

/**
 * Marks what is selected by classes of its cells, in the place of the library's own layers.
 *
 * Those are laid over the cells at places that are measured first, so that the browser had
 * to lay the page out some ten times whenever the selection moved. The library draws and
 * scrolls cells as before.
 */
export function markSelection(hot: Hot): void {
	const { view } = hot;
	const marked = new Map<DrawnTable, readonly Element[]>();
	const mark = (table: DrawnTable) => {
		for (const element of marked.get(table) ?? []) element.classList.remove(...MARKS);
		marked.set(table, marks(table, hot.getSelectedLast()));
	};
	const tables = [
		view.wt.wtTable,
		...Object.values(view.wt.wtOverlays).flatMap((overlay) => overlay?.clone?.wtTable ?? []),
	];
	for (const table of tables) table.refreshSelections = () => mark(table);
	view.wt.wtOverlays.topOverlay.redrawAllSelectionsBorders = () => undefined;
	const drawAll = view.render.bind(view);
	view.render = () => {
		const [row = 0, column = 0] = hot.getSelectedLast() ?? [];
		if (hot.forceFullRender || !tables.some((table) => cellAt(table, row, column))) drawAll();
		else tables.forEach(mark);
	};
}

/** Marks the drawn part of a selection. @returns what is marked now */
function marks(table: DrawnTable, corners: readonly number[] | undefined): Element[] {
	if (!corners) return [];
	const marked: Element[] = [];
	const add = (element: Element | null | undefined, ...names: string[]) => {
		if (!element) return;
		element.classList.add(...names);
		marked.push(element);
	};
	const { top, left, bottom, right } = rangeOf(corners as [number, number, number, number]);
	const isBlock = top !== bottom || left !== right;
	const rows = drawnRows(table).filter((row) => row >= top && row <= bottom);
	const columns = drawnColumns(table).filter((column) => column >= left && column <= right);
	for (const column of columns) add(table.getColumnHeader(column), HEADER);
	for (const row of rows) {
		add(table.getRowHeader(row), HEADER);
		if (isBlock)
			for (const column of columns)
				add(
					cellAt(table, row, column),
					"area",
					...(row === top ? [EDGES.top] : []),
					...(row === bottom ? [EDGES.bottom] : []),
					...(column === left ? [EDGES.left] : []),
					...(column === right ? [EDGES.right] : []),
				);
	}
	const [row = 0, column = 0] = corners;
	add(cellAt(table, row, column), "current");
	return marked;
}

function drawnRows(table: DrawnTable): number[] {
	return drawn(table.rowFilter, table.getRenderedRowsCount());
}

function drawnColumns(table: DrawnTable): number[] {
	return drawn(table.columnFilter, table.getRenderedColumnsCount());
}

function drawn(filter: Filter | null, length: number): number[] {
	return filter ? Array.from({ length }, (_, at) => filter.renderedToSource(at)) : [];
}

/** The cell where it is drawn; of a whole row or column the first. */
function cellAt(table: DrawnTable, row: number, column: number): Element | undefined {
	const at = { row: Math.max(0, row), col: Math.max(0, column) };
	if (!drawnColumns(table).includes(at.col)) return undefined;
	const found = table.getCell(at);
	return found instanceof Element ? found : undefined;
}

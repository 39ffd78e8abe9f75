import "handsontable/dist/handsontable.css";
import Core from "handsontable/es/core.js";
import TextEditor from "handsontable/es/editors/textEditor.js";
import { stopImmediatePropagation } from "handsontable/es/helpers/dom/event.js";
import { rootInstanceSymbol } from "handsontable/es/utils/rootInstance.js";
import { textScale } from "../../dom/textScale.ts";
import type { Grid, GridEvents } from "../grid.ts";
import type { GridModel } from "../gridModel.ts";
import { sameFrame } from "../sameFrame.ts";
import { answerClipboard } from "./answerClipboard.ts";
import { cellEditor } from "./cellEditor.ts";
import { choiceEditor } from "./choiceEditor.ts";
import { columnsInPlace, ROW_NAMES_PX } from "./columnsInPlace.ts";
import { gridHeight } from "./gridHeight.ts";
import { listenQuietly } from "./listenQuietly.ts";
import { markSelection } from "./markSelection.ts";
import { rangeOf } from "./rangeOf.ts";
import { redrawCell, renderCell } from "./renderCell.ts";
import { renderHeader } from "./renderHeader.ts";
import { rowsWhenAsked } from "./rowsWhenAsked.ts";
import { sayCell } from "./sayCell.ts";

const TAB = 9;
const ENTER = 13;

const CellEditor = cellEditor(TextEditor);
const ChoiceEditor = choiceEditor(CellEditor);

/**
 * The grid, by Handsontable 6.2.2. This is the only file that knows the library.
 *
 * It shows a model and reports what a person does; it never keeps a changed text
 * itself. Cells and headers are text nodes; its own paste, undo and menus are off.
 *
 * @param tallest the share of the screen's height that it may take
 */
export function handsontableGrid(
	host: HTMLElement,
	first: GridModel,
	events: GridEvents,
	tallest: number,
): Grid {
	let model = first;
	const { data, refill } = rowsWhenAsked(() => model);
	/** The cell is left downwards; the row to go on in may only be made by what was typed. */
	let goesDown = false;
	const scale = textScale();
	const inPlace = () => columnsInPlace(model, host.clientWidth / scale);
	const layout = () => ({
		colWidths: model.columns.map((column) => column.width * scale),
		columns: model.columns.map(() => ({})),
		fixedColumnsLeft: inPlace(),
		rowHeights: (row: number) => model.rowHeight(row) * scale,
		rowHeaders: model.rowName ? (row: number) => model.rowName?.(row) ?? "" : false,
		height: gridHeight(model, tallest),
	});
	const hot = new Core(
		host,
		{
			...layout(),
			data,
			colHeaders: () => "",
			columnHeaderHeight: first.headerHeight * scale,
			rowHeaderWidth: ROW_NAMES_PX * scale,
			cells: (row = 0, column = 0) => {
				const { kind, entry } = model.cell(row, column);
				return {
					readOnly: kind !== "typed",
					options: entry?.options,
					editor: entry?.options ? ChoiceEditor : CellEditor,
					renderer: (_: unknown, td: HTMLElement, r: number, c: number) =>
						renderCell(td, model, r, c),
				};
			},
			afterGetColHeader: (column: number, th: HTMLElement) =>
				renderHeader(th, model.columns[column]),
			beforeChange: (changes: readonly [number, string | number, unknown, unknown][] | null) => {
				const asked = (changes ?? []).map(([row, column, , text]) => ({
					row,
					column: Number(column),
					text: String(text ?? ""),
				}));
				const different = asked.filter(({ row, column, text }) => text !== data[row]?.[column]);
				if (different.length > 0) queueMicrotask(() => events.edited(different));
				return false;
			},
			afterSelection: (row: number, column: number) => {
				sayCell(host, model, row, column);
				if (!host.contains(document.activeElement)) host.focus({ preventScroll: true });
				events.selected(row, column);
			},
			beforeKeyDown: (event: KeyboardEvent) => {
				const { shiftKey, ctrlKey, altKey } = event;
				goesDown = event.keyCode === ENTER && !shiftKey && !ctrlKey && !altKey && editing();
				if (editing()) return;
				if (event.keyCode === TAB) leave();
				else if (events.pressed(event)) event.preventDefault();
				else return;
				stopImmediatePropagation(event);
			},
			selectionMode: "range",
			copyPaste: false,
			undo: false,
			fillHandle: false,
			autoColumnSize: false,
			autoRowSize: false,
			outsideClickDeselects: false,
			// Enter in the last row stays there: the top of the next column is nobody's next cell.
			autoWrapCol: false,
			maxRows: Number.POSITIVE_INFINITY,
			renderAllRows: false,
		},
		rootInstanceSymbol,
	);
	hot.init();
	markSelection(hot);

	const update = (settings: object) => hot.updateSettings(settings as never, false);
	const activeEditor = () => hot.getActiveEditor() as InstanceType<typeof CellEditor> | undefined;
	const editing = () => activeEditor()?.isOpened() ?? false;
	const quiet = () => {
		for (const part of host.querySelectorAll(".ht_master, [class*=ht_clone]"))
			part.setAttribute("aria-hidden", "true");
		// A browser stops with Tab at whatever scrolls and holds no field.
		for (const scrolls of host.querySelectorAll<HTMLElement>(".wtHolder")) scrolls.tabIndex = -1;
	};
	quiet();

	/** The selected cell may still be written into, or still not: the library has its editor ready for it. */
	const sameEntry = (before: GridModel) => {
		const [row = 0, column = 0] = hot.getSelectedLast() ?? [];
		const [r, c] = [Math.max(0, row), Math.max(0, column)];
		return before.cell(r, c).kind === model.cell(r, c).kind;
	};
	/** The library draws everything anew at every change, which an old computer feels at every edit. */
	const redraw = () => {
		const [at, column] = hot.getSelectedLast() ?? [];
		if (at !== undefined && column !== undefined) sayCell(host, model, at, column);
		// Cells of columns that stay in place are kept twice.
		const cells = host.querySelectorAll<HTMLTableCellElement>(
			".ht_master tbody td, .ht_clone_left tbody td",
		);
		for (const td of cells) redrawCell(td, model);
	};

	/** The host outlives the grid, so what listens to it goes with the grid. */
	const gone = new AbortController();
	const { signal } = gone;
	host.tabIndex = 0;
	host.setAttribute("role", "application");
	host.setAttribute("aria-label", model.name);
	const onFocusIn = (event: FocusEvent) => {
		host.tabIndex = -1;
		const field = event.target as Element;
		field.setAttribute("aria-label", host.getAttribute("aria-label") ?? model.name);
		listenQuietly(hot);
		if (event.target === host && !hot.getSelectedLast()) hot.selectCell(0, 0);
	};
	const onFocusOut = (event: FocusEvent) => {
		if (event.relatedTarget === null) setTimeout(keepFocus);
		else if (!host.contains(event.relatedTarget as Node)) {
			// What is being typed is kept, as under a click beside the grid.
			if (editing()) activeEditor()?.finishEditing(false);
			leave();
		}
	};
	const leave = () => {
		host.tabIndex = 0;
		hot.unlisten();
	};
	/** The library drops the focus on every selection; the grid takes it back while it is at work. */
	const keepFocus = () => {
		if (document.activeElement !== document.body || !host.isConnected || signal.aborted) return;
		if (hot.isListening()) host.focus({ preventScroll: true });
		else host.tabIndex = 0;
	};
	/** Where the selected rows are no more, the library selects others and takes the focus from the field a person is in. */
	const letGo = () => {
		const [row = 0, , endRow = row] = hot.getSelectedLast() ?? [];
		const isGone = Math.max(row, endRow) >= model.rowCount;
		if (isGone && !host.contains(document.activeElement)) hot.deselectCell();
	};
	/** The library notices only a window that changes its width. */
	let width = host.clientWidth;
	const resized = new ResizeObserver(() => {
		if (host.clientWidth === width || editing()) return;
		width = host.clientWidth;
		update({ fixedColumnsLeft: inPlace() });
		const [row, column] = hot.getSelectedLast() ?? [];
		if (row !== undefined && column !== undefined)
			hot.scrollViewportTo(Math.max(0, row), Math.max(0, column));
	});
	resized.observe(host);
	host.addEventListener("focusin", onFocusIn, { signal });
	host.addEventListener("focusout", onFocusOut, { signal });
	answerClipboard(host, signal, { hot, model: () => model, data, editing, events });

	return {
		show(next) {
			const before = model;
			model = next;
			refill();
			if (sameFrame(before, next) && !editing() && sameEntry(before)) return redraw();
			const sameShape =
				next.columns.length === before.columns.length &&
				next.columns.every((column, at) => column.width === before.columns[at]?.width);
			const sameRows = next.rowCount === before.rowCount;
			if (!sameRows) letGo();
			// The rows are in the list that the library holds already; given anew, it would draw all twice.
			if (!sameShape) update(layout());
			else if (!sameRows) update({ height: gridHeight(model, tallest) });
			else hot.render();
			quiet();
			const [row, column] = hot.getSelectedLast() ?? [];
			const madeRow = next.rowCount > before.rowCount && row === before.rowCount - 1;
			if (goesDown && madeRow) hot.selectCell(before.rowCount, column ?? 0);
			goesDown = false;
		},
		layOut: () => hot.render(),
		mark(next) {
			model = next;
			redraw();
		},
		select: (row, column) => void hot.selectCell(row, column),
		selection() {
			const range = hot.getSelectedLast();
			return range ? { row: range[0] ?? 0, column: range[1] ?? 0 } : undefined;
		},
		selectedCell() {
			const [row = -1, column = -1] = hot.getSelectedLast() ?? [];
			return hot.getCell(row, column) ?? undefined;
		},
		range() {
			const corners = hot.getSelectedLast();
			return corners && rangeOf(corners as [number, number, number, number]);
		},
		destroy() {
			gone.abort();
			resized.disconnect();
			hot.destroy();
		},
	};
}

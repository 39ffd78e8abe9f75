import { readTyped } from "../../core/edit/readPaste.ts";
import { withTexts } from "../../core/edit/withTexts.ts";
import type { Place } from "../../core/problem.ts";
import { say } from "../../core/say.ts";
import { isTyped } from "../../core/sheets/sheetOf.ts";
import { rewrittenProblem } from "../../io/rewrittenProblem.ts";
import { el, fill } from "../dom/el.ts";
import type { Arrangement } from "../grid/arrangement.ts";
import type { CellRange } from "../grid/cellRange.ts";
import type { Grid } from "../grid/grid.ts";
import type { CellText, GridModel } from "../grid/gridModel.ts";
import { handsontableGrid } from "../grid/library/handsontableGrid.ts";
import { SemanticTable } from "../grid/library/semanticTable.ts";
import { ShownSheet } from "../grid/shownSheet.ts";
import type { PageCells, Surroundings, Writing } from "../page.ts";
import type { State } from "../state/store.ts";
import { cellOf } from "./cellOf.ts";
import { cellPane } from "./cellPane.ts";
import { pasteAsking } from "./pasteAsking.ts";

/** The cells of a page: the grid, the margin that explains the selected cell, and the same as a plain table. */
export class Desk {
	readonly element: HTMLElement;
	readonly table = el("div", { class: "as-table" });
	readonly shown = new ShownSheet();
	readonly cells: PageCells;
	/** Answers a key pressed on a cell; true where it did. */
	pressed: (event: KeyboardEvent) => boolean = () => false;
	readonly #file: string;
	readonly #around: Surroundings;
	readonly #host = el("div", { class: "grid" });
	readonly #pane = el("aside", { class: "pane", "aria-label": say`About the selected cell` });
	readonly #plain = new SemanticTable();
	#grid: Grid | undefined;
	#editing = false;

	constructor(file: string, cells: PageCells, around: Surroundings) {
		this.cells = cells;
		this.#file = file;
		this.#around = around;
		const name = cells.look ? `desk ${cells.look}` : "desk";
		this.element = el("div", { class: name }, this.#host, this.#pane);
		this.#paintPane();
	}

	paint(state: State): void {
		this.shown.take(this.cells.grid(state), this.#editing);
		this.#paintCells();
	}

	/** Shows other rows, or the same in another order. */
	arrange(arrangement: Arrangement): void {
		this.shown.arrange(arrangement);
		this.#paintCells();
	}

	/** Writes texts into cells as they are seen. */
	edit(changes: readonly CellText[]): void {
		const { store } = this.#around;
		const own = changes.map((change) => ({ ...change, row: this.shown.rowOf(change.row) }));
		const { file, texts } = this.cells.writing(store.state, own);
		this.#write({ file, texts: readTyped(store.state.workbook, file, texts) });
	}

	/** Writes what was pasted from another program, read as a block; what only the person can know is asked first. */
	async paste(changes: readonly CellText[], told: readonly string[]): Promise<void> {
		const { store, tell } = this.#around;
		const own = changes.map((change) => ({ ...change, row: this.shown.rowOf(change.row) }));
		const writing = this.cells.writing(store.state, own);
		const read = await pasteAsking(store.state.workbook, writing);
		if (!read) return tell([say`Nothing was pasted.`]);
		this.#write({ ...writing, texts: read.texts });
		tell([...told, ...rewrittenProblem(read.rewritten).map(({ message }) => message)]);
	}

	#write({ file, texts }: Writing): void {
		const { store } = this.#around;
		this.#editing = true;
		try {
			store.edit(withTexts(store.state.workbook, file, texts));
		} finally {
			this.#editing = false;
		}
	}

	/** The block selected, in rows as they are seen. */
	range(): CellRange | undefined {
		return this.#grid?.range();
	}

	/** Brings a place of this sheet under the eyes; a filter that hides it is cleared. */
	show(place: Place): void {
		const { sheet, arrangement } = this.shown;
		if (!sheet) return;
		const { row, column } = cellOf(this.#around.store.state, sheet, place);
		if (this.shown.seenAt(row) === undefined) {
			this.arrange({ ...arrangement, among: "", contains: "" });
			this.#around.tell([say`The filter hid this row and was cleared.`]);
		}
		this.#grid?.select(this.shown.seenAt(row) ?? 0, column);
		this.#host.scrollIntoView({ block: "nearest" });
	}

	/** Selects the cell where a person goes on. */
	goOn(): void {
		const place = this.cells.goOn?.(this.#around.store.state);
		if (!place) return;
		const row = this.shown.seenAt(place.row);
		if (row === undefined) this.arrange({ ...this.shown.arrangement, among: "", contains: "" });
		this.#grid?.select(this.shown.seenAt(place.row) ?? 0, place.column);
		this.#host.scrollIntoView({ block: "nearest" });
	}

	destroy(): void {
		this.#grid?.destroy();
	}

	#paintCells(): void {
		const { model } = this.shown;
		if (model && model.rowCount > 0) this.#paintModel(model);
		else this.#paintNothing();
	}

	#paintModel(model: GridModel): void {
		if (this.#grid) this.#grid.show(model);
		else {
			fill(this.#host);
			this.#grid = handsontableGrid(this.#host, model, {
				selected: (row, column) => this.#paintPane({ row, column }),
				edited: (changes) => this.edit(changes),
				pasted: (changes, told) => void this.paste(changes, told),
				pressed: (event) => this.pressed(event),
				told: (messages) => this.#around.tell(messages),
			});
		}
		this.#plain.show(model);
		if (!this.#plain.element.parentNode) fill(this.table, this.#plain.element);
		this.#paintPane(this.#grid.selection());
	}

	#paintNothing(): void {
		this.#grid?.destroy();
		this.#grid = undefined;
		for (const name of ["style", "tabindex", "role"]) this.#host.removeAttribute(name);
		const words = this.shown.sheet
			? say`No row contains this text.`
			: nothingWords(this.#around.store.state);
		fill(this.#host, el("p", { class: "nothing" }, words));
		fill(this.table);
		this.#paintPane();
	}

	#paintPane(at?: { readonly row: number; readonly column: number }): void {
		const cell = at && this.shown.model?.cell(at.row, at.column);
		cellPane(this.#pane, isTyped(this.#file), cell, {
			write: (text) => at && this.edit([{ ...at, text }]),
			goTo: this.#around.goTo,
		});
	}
}

function nothingWords(state: State): string {
	const first = state.plan.problems.find((problem) => problem.weight === "error");
	return first ? say`Nothing to show yet. It waits for: ${first.message}` : say`No rows here.`;
}

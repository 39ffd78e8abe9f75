import { readTyped } from "../../core/edit/readPaste.ts";
import { withTexts } from "../../core/edit/withTexts.ts";
import type { Place, Problem } from "../../core/problem.ts";
import { say } from "../../core/say.ts";
import { isTyped } from "../../core/sheets/sheetOf.ts";
import { rewrittenProblem } from "../../io/rewrittenProblem.ts";
import { el, fill } from "../dom/el.ts";
import { soon } from "../dom/soon.ts";
import { problemWords } from "../format/problemWords.ts";
import type { Arrangement } from "../grid/arrangement.ts";
import type { CellRange } from "../grid/cellRange.ts";
import type { Grid } from "../grid/grid.ts";
import type { CellText, GridCell, GridModel } from "../grid/gridModel.ts";
import { handsontableGrid } from "../grid/library/handsontableGrid.ts";
import { SemanticTable } from "../grid/library/semanticTable.ts";
import { ShownSheet } from "../grid/shownSheet.ts";
import type { PageCells, Surroundings, Writing } from "../page.ts";
import type { State } from "../state/store.ts";
import { CellAside } from "./cellAside.ts";
import { cellOf } from "./cellOf.ts";
import { keepInSight } from "./keepInSight.ts";
import { pasteAsking } from "./pasteAsking.ts";

interface At {
	readonly row: number;
	readonly column: number;
}

/** The cells of a page: the grid, the margin that explains the selected cell, and the same as a plain table. */
export class Desk {
	readonly element: HTMLElement;
	readonly table = el("div", { class: "as-table" });
	readonly shown = new ShownSheet();
	readonly cells: PageCells;
	/** Answers a key pressed on a cell; true where it did. */
	pressed: (event: KeyboardEvent) => boolean = () => false;
	readonly #around: Surroundings;
	readonly #host = el("div", { class: "grid" });
	/** What explains the selected cell, and the button that asks for it. */
	readonly aside: CellAside;
	readonly #plain = new SemanticTable();
	#grid: Grid | undefined;
	readonly #tallest: number;
	#at: At | undefined;
	#editing = false;
	/** The problems that its cells were painted with. */
	#found: readonly Problem[] = [];

	/** @param tallest the share of the screen's height that the grid may take */
	constructor(file: string, cells: PageCells, around: Surroundings, tallest: number) {
		this.cells = cells;
		this.#around = around;
		const name = cells.look ? `desk ${cells.look}` : "desk";
		this.#tallest = tallest;
		this.aside = new CellAside(
			isTyped(file),
			{ write: (text) => this.#at && this.edit([{ ...this.#at, text }]), goTo: around.goTo },
			() => this.#host.focus({ preventScroll: true }),
		);
		this.element = el("div", { class: name }, this.#host, this.aside.element);
	}

	paint(state: State): void {
		this.#found = state.plan.found;
		this.shown.take(this.cells.grid(state), this.#editing);
		this.#paintCells();
	}

	/** The cells as they were painted, with the problems that have been found since. */
	mark(state: State): void {
		const { file } = this.cells.writing(state, []);
		const { found } = state.plan;
		const known = new Set(this.#found);
		this.#found = found;
		if (!found.some((each) => each.file === file && !known.has(each))) return;
		this.shown.take(this.cells.grid(state), true);
		const { model } = this.shown;
		if (!model || model.rowCount === 0) return;
		this.#grid?.mark(model);
		this.#showPlain(model);
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
		// The row keeps its place only where those above it are as high as they are thought to be.
		this.#measureAll();
		this.#grid?.select(this.shown.seenAt(row) ?? 0, column);
		this.aside.lead();
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
		this.#grid = undefined;
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
			this.#grid = handsontableGrid(
				this.#host,
				model,
				{
					selected: (row, column) => this.#moved({ row, column }),
					edited: (changes) => this.edit(changes),
					pasted: (changes, told) => void this.paste(changes, told),
					pressed: (event) => this.#asks(event) || this.pressed(event),
					told: (messages) => this.#around.tell(messages),
				},
				this.#tallest,
			);
		}
		this.#at = this.#grid.selection();
		soon(this.aside.element, () => this.aside.paint(this.#cell()));
		if (!this.#plain.element.parentNode) fill(this.table, this.#plain.element);
		this.#showPlain(model);
	}

	#measureAll(): void {
		const { model } = this.shown;
		if (!model?.measureOn) return;
		const thought = heightOfAll(model);
		while (model.measureOn());
		if (heightOfAll(model) !== thought) this.#grid?.layOut();
	}

	/** What the person does not wait for: the plain table, and how high the rows are that are not on the screen. */
	#showPlain(model: GridModel): void {
		this.#plain.show(model);
		const { measureOn } = model;
		if (!measureOn) return;
		const thought = heightOfAll(model);
		soon(this.#host, () => {
			if (measureOn()) return true;
			if (heightOfAll(model) !== thought) this.#grid?.layOut();
			return false;
		});
	}

	#paintNothing(): void {
		this.destroy();
		for (const name of ["style", "tabindex", "role"]) this.#host.removeAttribute(name);
		const words = this.shown.sheet
			? say`No row contains this text.`
			: nothingWords(this.#around.store.state);
		fill(this.#host, el("p", { class: "nothing" }, words));
		fill(this.table);
		this.#at = undefined;
		this.aside.paint(undefined);
	}

	#moved(at: At): void {
		this.#at = at;
		const { aside } = this;
		if (!aside.isOpen) aside.moved(this.#cell());
		if (!aside.isOpen) return;
		soon(aside.element, () => {
			aside.paint(this.#cell());
			keepInSight(this.#grid?.selectedCell(), aside.element);
		});
	}

	/** Enter on a cell that cannot be edited asks why it is what it is; Escape sends the answer away. */
	#asks({ key, altKey, ctrlKey, shiftKey }: KeyboardEvent): boolean {
		const isLocked = this.#cell()?.kind !== "typed";
		if (key === "Escape" && this.aside.isOpen) this.aside.close();
		else if (key === "Enter" && !ctrlKey && !shiftKey && (altKey || isLocked)) this.aside.ask();
		else return false;
		return true;
	}

	#cell(): GridCell | undefined {
		return this.#at && this.shown.model?.cell(this.#at.row, this.#at.column);
	}
}

function heightOfAll(model: GridModel): number {
	let all = 0;
	for (let row = 0; row < model.rowCount; row++) all += model.rowHeight(row);
	return all;
}

function nothingWords(state: State): string {
	const first = state.plan.problems.find((problem) => problem.weight === "error");
	return first ? say`Nothing to show yet. It needs: ${problemWords(first)}` : say`No rows here.`;
}

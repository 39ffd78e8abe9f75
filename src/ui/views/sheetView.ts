import type { Place } from "../../core/problem.ts";
import { say } from "../../core/say.ts";
import { THIS_WEEK } from "../book/pageTitles.ts";
import { isTyped, sheetOf } from "../book/sheetOf.ts";
import type { State, Store } from "../book/store.ts";
import { withoutRows } from "../book/withTexts.ts";
import { el, fill } from "../dom/el.ts";
import { entryPane } from "../explain/entryPane.ts";
import { whyPane } from "../explain/whyPane.ts";
import { saveSheet } from "../files/saveWorkbook.ts";
import type { Grid } from "../grid/grid.ts";
import type { CellText, GridCell, GridModel } from "../grid/gridModel.ts";
import { handsontableGrid } from "../grid/handsontableGrid.ts";
import { semanticTable } from "../grid/semanticTable.ts";
import { printOut } from "../print/printOut.ts";
import { printOuts } from "../print/printOuts.ts";
import { cautionList } from "./cautions.ts";
import { cautionsOf } from "./cautionWords.ts";
import { cellOf } from "./cellOf.ts";
import { headline } from "./headline.ts";
import { overGrid } from "./overGrid.ts";
import type { View } from "./ownPages.ts";
import { printedFoot, printedHead } from "./printedPage.ts";
import { problemList } from "./problemList.ts";
import { editedWorkbook, sheetGrid } from "./sheetGrid.ts";
import { type SheetPart, sheetParts } from "./sheetParts.ts";
import { tonightList } from "./tonightList.ts";
import { weekWords } from "./weekWords.ts";

/** What a sheet on the screen needs from the page around it. */
export interface Surroundings {
	readonly store: Store;
	goTo(place: Place): void;
	tell(messages: readonly string[]): void;
}

/** One sheet on the screen. It is mounted once and painted again at every change. */
export class SheetView implements View {
	readonly file: string;
	readonly #around: Surroundings;
	readonly #title = el("h1", {});
	readonly #about = el("div", { class: "about" });
	readonly #over = el("div", { class: "over" });
	readonly #host = el("div", { class: "grid" });
	readonly #pane = el("aside", { class: "pane", "aria-label": say`About the selected cell` });
	readonly #table = el("div", { class: "as-table" });
	readonly #under = el("div", { class: "under" });
	readonly #head = el("div", { class: "print-only" });
	readonly #foot = el("div", { class: "print-only" });
	readonly #part: SheetPart | undefined;
	#grid: Grid | undefined;
	#model: GridModel | undefined;

	constructor(file: string, place: HTMLElement, around: Surroundings) {
		this.file = file;
		this.#around = around;
		this.#part = sheetParts[file]?.(around);
		fill(
			place,
			this.#head,
			el("header", { class: "sheet-head" }, this.#title, this.#about),
			this.#over,
			this.#part?.element,
			this.#tools(),
			el("div", { class: file === THIS_WEEK ? "desk week" : "desk" }, this.#host, this.#pane),
			this.#table,
			this.#under,
			this.#foot,
		);
		this.#emptyPane();
		this.paint(around.store.state);
	}

	paint(state: State): void {
		this.#title.textContent = headline(state, this.file);
		const about = this.file === THIS_WEEK ? weekWords(state) : (sheetOf(this.file)?.about ?? "");
		fill(this.#about, el("p", {}, about));
		const cautions = cautionsOf(this.file);
		const cautioned = cautions.length > 0 && cautionList(cautions);
		const isWeek = this.file === THIS_WEEK;
		fill(this.#over, this.#picture(state), !isWeek && cautioned);
		this.#part?.paint(state);
		this.#paintGrid(state);
		const own = state.plan.problems.filter((problem) => problem.file === this.file);
		fill(
			this.#under,
			el(
				"div",
				{ class: "under-list" },
				isWeek
					? problemList(state.plan.problems, this.#around.goTo)
					: own.length > 0 && problemList(own, this.#around.goTo, say`On this sheet`),
				isWeek && tonightList(state),
			),
			isWeek && cautioned,
		);
		fill(this.#head, ...printedHead(state));
		fill(this.#foot, ...printedFoot());
	}

	/** Brings a place of this sheet under the eyes. */
	show(place: Place): void {
		if (!this.#model) return;
		const { row, column } = cellOf(this.#around.store.state, this.#model, place);
		this.#grid?.select(row, column);
		this.#host.scrollIntoView({ block: "nearest" });
	}

	destroy(): void {
		this.#grid?.destroy();
	}

	#paintGrid(state: State): void {
		const model = sheetGrid(state, this.file);
		this.#model = model;
		if (!model) {
			this.#grid?.destroy();
			this.#grid = undefined;
			this.#host.removeAttribute("style");
			this.#host.removeAttribute("tabindex");
			this.#host.removeAttribute("role");
			fill(this.#host, el("p", { class: "nothing" }, nothingWords(state)));
			fill(this.#table);
			return;
		}
		if (this.#grid) this.#grid.show(model);
		else {
			fill(this.#host);
			this.#grid = handsontableGrid(this.#host, model, {
				selected: (row, column) => this.#paintPane(row, column),
				edited: (changes) => this.#edit(changes),
				told: (messages) => this.#around.tell(messages),
			});
		}
		fill(this.#table, semanticTable(model));
		const at = this.#grid.selection();
		if (at) this.#paintPane(at.row, at.column);
	}

	#paintPane(row: number, column: number): void {
		const cell = this.#model?.cell(row, column);
		if (cell?.kind === "typed") this.#paintEntry(cell, row, column);
		else if (cell?.figures?.length) whyPane(this.#pane, cell.figures, this.#around.goTo);
		else this.#emptyPane();
	}

	/** A typed cell can be filled in here; where the plan says something beneath, that is explained too. */
	#paintEntry(cell: GridCell, row: number, column: number): void {
		const entry = el("div", {});
		const why = el("div", { class: "also" });
		fill(this.#pane, entry, why);
		entryPane(entry, cell, (text) => this.#edit([{ row, column, text }]));
		if (cell.figures?.length) whyPane(why, cell.figures, this.#around.goTo);
	}

	#emptyPane(): void {
		const words = isTyped(this.file)
			? say`Select a cell to see what it is for and what it may hold.`
			: say`Select a cell to see why it is what it is.`;
		fill(this.#pane, el("p", { class: "hint" }, words));
	}

	#edit(changes: readonly CellText[]): void {
		const { store } = this.#around;
		store.edit(editedWorkbook(store.state, this.file, changes));
	}

	#picture(state: State): HTMLElement | undefined {
		return overGrid[this.file]?.(state, this.#over.clientWidth || window.innerWidth - 32);
	}

	#tools(): HTMLElement {
		const { store, tell } = this.#around;
		const asTable = el("button", { type: "button", "aria-pressed": "false" }, say`Read as a table`);
		asTable.addEventListener("click", () => {
			const on = this.#table.classList.toggle("open");
			asTable.setAttribute("aria-pressed", String(on));
		});
		const remove = () => {
			const at = this.#grid?.selection();
			if (!at) return tell([say`Select a row first.`]);
			store.edit(withoutRows(store.state.workbook, this.file, at.row, at.row));
		};
		const save = () => saveSheet(store.state.workbook, store.state.plan, this.file);
		const hasRows = isTyped(this.file) && this.file !== "unit.csv";
		return el(
			"div",
			{ class: "tools" },
			asTable,
			this.file !== THIS_WEEK &&
				el("button", { type: "button", onclick: save }, say`Save this sheet (CSV)`),
			hasRows && el("button", { type: "button", onclick: remove }, say`Delete row`),
			...(printOuts[this.file] ?? []).map((out) =>
				el("button", { type: "button", onclick: () => printOut(out, store.state) }, out.name),
			),
			printOuts[this.file] === undefined &&
				el("button", { type: "button", onclick: () => window.print() }, say`Print this page`),
		);
	}
}

function nothingWords(state: State): string {
	const first = state.plan.problems.find((problem) => problem.weight === "error");
	return first ? say`Nothing to show yet. It waits for: ${first.message}` : say`No rows here.`;
}

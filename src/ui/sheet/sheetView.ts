import type { Place } from "../../core/problem.ts";
import { say } from "../../core/say.ts";
import { type Child, el, fill } from "../dom/el.ts";
import { renew } from "../dom/renew.ts";
import { soon } from "../dom/soon.ts";
import { textScale } from "../dom/textScale.ts";
import type { GridPage, PageTitle, PrintOut, SheetPart, Surroundings, View } from "../page.ts";
import type { State } from "../state/store.ts";
import { cautionList } from "./cautionList.ts";
import { Desk } from "./desk.ts";
import { fold } from "./fold.ts";
import { problemList } from "./problemList.ts";
import { refusedRows } from "./refusedRows.ts";
import { sheetCells } from "./sheetCells.ts";
import { SheetTools } from "./sheetTools.ts";
import { TruthsPart } from "./truthsPart.ts";

/** Shares of the screen's height that a grid may take: by itself, and with a picture or a form after it. */
const ALONE = 0.72;
const BESIDE_MORE = 0.42;

/**
 * One sheet on the screen: its answer, its cells, then the picture and whatever else a person
 * works with, so that the first row is on the first screen of a phone too. It is mounted once and painted again at every change. */
export class SheetView implements View {
	readonly file: string;
	readonly #page: PageTitle;
	readonly #on: GridPage;
	readonly #around: Surroundings;
	readonly #title = el("h1", {});
	readonly #about = el("p", {});
	readonly #over = el("div", { class: "over" });
	readonly #under = el("div", { class: "under" });
	readonly #turner: SheetPart | undefined;
	readonly #part: SheetPart | undefined;
	readonly #truths: TruthsPart | undefined;
	readonly #desk: Desk;
	readonly #tools: SheetTools;

	/** @param on what stands on the page around its cells */
	constructor(page: PageTitle, on: GridPage, place: HTMLElement, around: Surroundings) {
		this.file = page.file;
		this.#page = page;
		this.#on = on;
		this.#around = around;
		const { store } = around;
		this.#turner = on.turner?.({ store, turned: () => this.paint(store.state) });
		this.#part = on.part?.(around);
		if (on.tellsTruths) this.#truths = new TruthsPart(around.goTo);
		const { over, part, cautions } = on;
		const tallest = over || part || cautions ? BESIDE_MORE : ALONE;
		this.#desk = new Desk(page.file, on.cells ?? sheetCells(page.file), around, tallest);
		this.#tools = new SheetTools(page.file, on, this.#desk, around.store);
		fill(
			place,
			el(
				"div",
				{ class: "sheet-parts" },
				el("header", { class: "sheet-head" }, this.#title),
				this.#truths?.element,
				el(
					"div",
					{ class: "folds" },
					fold("about", say`What this page is for`, this.#about),
					fold("tools-fold", say`Tools`, this.#tools.element),
				),
				this.#turner?.element,
				this.#tools.below,
				this.#desk.element,
				this.#part?.element,
				this.#over,
				this.#desk.table,
				this.#under,
			),
		);
		const { state } = around.store;
		// What stands over the cells has its place from the first, so that they stay where they are.
		this.#truths?.holdPlace();
		this.#paintTitle(state);
		this.paint(state);
	}

	/** The cells at once; their answer, and what stands around them, when they have been painted. */
	paint(state: State): void {
		const { store } = this.#around;
		const about = this.#on.aboutNow?.(state) ?? this.#page.about ?? "";
		if (this.#about.textContent !== about) this.#about.textContent = about;
		this.#turner?.paint(state);
		this.#part?.paint(state);
		this.#desk.paint(state);
		this.#tools.paint();
		soon(
			this.#title,
			store.whole((whole) => {
				this.#desk.mark(whole);
				this.#paintTitle(whole);
			}),
		);
		const truths = this.#truths;
		if (truths) soon(truths.element, truths.piece(state));
		soon(this.#over, () => this.#paintOver(state));
		soon(this.#under, () => renew(this.#under, ...this.#notes(state)));
	}

	#paintTitle(state: State): void {
		renew(
			this.#title,
			refusedRows(state, this.file) ?? this.#on.headline?.(state) ?? this.#page.title,
		);
	}

	#paintOver(state: State): void {
		const { over, cautions } = this.#on;
		fill(this.#over, over?.(state, this.#room), cautions && cautionList(cautions));
	}

	/** Asked for only where it is needed: it has the browser lay the page out. */
	get #room(): number {
		return (this.#over.clientWidth || window.innerWidth - 32) / textScale();
	}

	get onPaper(): PrintOut | undefined {
		return this.#on.prints?.[0];
	}

	show(place: Place): void {
		this.#desk.show(place);
		this.#tools.paint();
	}

	destroy(): void {
		this.#desk.destroy();
	}

	#notes(state: State): Child[] {
		const { goTo } = this.#around;
		if (this.#on.under) return this.#on.under(state, goTo);
		const own = state.plan.problems.filter((problem) => problem.file === this.file);
		const list = own.length > 0 && problemList(own, goTo, say`On this sheet`);
		return [el("div", { class: "under-list" }, list)];
	}
}

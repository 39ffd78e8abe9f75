import type { NewText } from "../core/edit/withTexts.ts";
import type { Place } from "../core/problem.ts";
import type { Sheet } from "../core/sheet.ts";
import type { Child } from "./dom/el.ts";
import type { CellText, GridModel } from "./grid/gridModel.ts";
import type { State, Store } from "./state/store.ts";

/** What a page on the screen needs from the program around it. */
export interface Surroundings {
	readonly store: Store;
	/** Opens the page of a place and shows it there; settled once it stands. */
	goTo(place: Place): Promise<void>;
	tell(messages: readonly string[]): void;
}

/** Something on the screen that is mounted once and painted at every change. */
export interface View {
	readonly file: string;
	/** The form that a print of the page gives, by its button or the browser's own; without it the page as it stands. */
	readonly onPaper?: PrintOut | undefined;
	paint(state: State): void;
	show(place: Place): void;
	destroy(): void;
}

/** What a page is called and for; a sheet's definition says it of the sheet's page. */
export interface PageTitle {
	/** What stands in the address: the file of a sheet, or a word of the page's own. */
	readonly file: string;
	readonly title: string;
	/** What the page is for, in a sentence or two. */
	readonly about?: string;
}

/**
 * A page of the workbook as the list of pages knows it: no more than its title, so that
 * the rail, the address and a search can be had without what stands on the pages.
 */
export interface Page extends PageTitle {
	/** What its rows are called, for a search, where they are not those of a sheet. */
	readonly rowNames?: readonly string[];
	/** What stands on it. It may come in a further script, when it is first asked for. */
	load(): Promise<GridPage | OwnPage>;
}

/** What is to be written, and into which file of the workbook. */
export interface Writing {
	readonly file: string;
	readonly texts: readonly NewText[];
}

/** The cells of a page, and what becomes of what is written in them. */
export interface PageCells {
	/** Undefined where there is nothing to show yet. */
	grid(state: State): GridModel | undefined;
	/** What texts in its cells mean in the workbook. */
	writing(state: State, changes: readonly CellText[]): Writing;
	/** Where a person goes on who fills the sheet in day by day. */
	goOn?(state: State): { readonly row: number; readonly column: number } | undefined;
	/** Which way a cell is copied over the block selected. */
	readonly fills: "down" | "right";
	/** What the style calls them, where they look like no other. */
	readonly look?: string;
}

/** A page of cells and what stands around them. */
export interface GridPage {
	/** Its cells, where they are not those of the sheet it is named after. */
	readonly cells?: PageCells;
	/** The answer that the page gives, for its title; undefined where there is none yet. */
	headline?(state: State): string | undefined;
	/** What the page is for, where that depends on the workbook. */
	aboutNow?(state: State): string;
	/** The picture after the grid with the sentence that says what it shows, in so many pixels of width. */
	over?(state: State, room: number): HTMLElement | undefined;
	/** The way to other cells of a long page, over the grid. */
	turner?(turning: Turning): SheetPart;
	/** A part after the grid that a person works with. */
	part?(around: Surroundings): SheetPart;
	/** Whether a round hangs on the page, so that what is to be known before one stands under its answer. */
	readonly tellsTruths?: boolean;
	/** What can hurt someone in the act that the page is about. */
	readonly cautions?: readonly string[];
	/** What is made for paper; a page without prints as it stands. */
	readonly prints?: readonly PrintOut[];
	/** What stands under the grid; without it the open problems of the sheet. */
	under?(state: State, goTo: Surroundings["goTo"]): Child[];
}

/** The page of one sheet. */
export interface SheetPage extends GridPage {
	readonly sheet: Sheet;
}

/** A page that is made of several sheets, or of none. */
export interface OwnPage {
	mount(place: HTMLElement, around: Surroundings): View;
}

/** A part of a sheet's page that a person works with: made once, painted at every change, so that nothing begun in it is lost. */
export interface SheetPart {
	readonly element: HTMLElement;
	paint(state: State): void;
}

/** What turns the cells of a page needs: `turned` has them painted as they are now. */
export interface Turning {
	readonly store: Store;
	turned(): void;
}

/** Something made for paper: what its button says, and its pages. */
export interface PrintOut {
	readonly name: string;
	/** Each element is one or more pages; CSS breaks between them. */
	pages(state: State): readonly HTMLElement[];
}

import type { CellRange } from "./cellRange.ts";
import type { CellText, GridModel } from "./gridModel.ts";

/** What a grid tells the view it stands in. */
export interface GridEvents {
	/** The person moved to a cell. */
	selected(row: number, column: number): void;
	/** The person asked for these texts. The grid waits for a new model to show them. */
	edited(changes: readonly CellText[]): void;
	/** The person pasted these texts from another program. @param told what the paste left out, in words */
	pasted(changes: readonly CellText[], told: readonly string[]): void;
	/** A key was pressed on a cell that is not being edited: true where it has been answered. */
	pressed(event: KeyboardEvent): boolean;
	/** Something to say in words: what a paste left out. */
	told(messages: readonly string[]): void;
}

/** A grid on the page. One adapter makes it; no other file knows by what library. */
export interface Grid {
	show(model: GridModel): void;
	/** Shows the same cells, of which some have other problems; what is being typed stays. */
	mark(model: GridModel): void;
	/** Lays the same rows out anew: more is known of their heights. */
	layOut(): void;
	select(row: number, column: number): void;
	/** Where the person is: the cell at which the selection began. */
	selection(): { readonly row: number; readonly column: number } | undefined;
	/** The element of that cell, where it is drawn. */
	selectedCell(): Element | undefined;
	/** The whole block selected. */
	range(): CellRange | undefined;
	destroy(): void;
}

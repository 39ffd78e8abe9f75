import type { Figure } from "../../core/calculation.ts";
import type { Problem } from "../../core/problem.ts";
import { say } from "../../core/say.ts";
import { problemWords } from "../format/problemWords.ts";
import { semicolon } from "../format/semicolon.ts";

/** What a person should know before filling a cell in. */
export interface Entry {
	readonly label: string;
	readonly unit: string;
	readonly help: string;
	readonly allowed: string;
	readonly options?: readonly string[];
	/** What a blank cell means, in words. */
	readonly blank?: string;
}

/** One cell as any view draws it: the grid, the table beside it, paper. */
export interface GridCell {
	readonly kind: "typed" | "computed" | "label";
	/** What is read. */
	readonly text: string;
	/** What an editor opens with, where that differs from `text`. */
	readonly raw?: string;
	/** A second, smaller line. */
	readonly beneath?: string;
	/** True where a person's figure stands over a forecast or default. */
	readonly own?: boolean;
	/** True where the text stands for a default nobody typed. */
	readonly standIn?: boolean;
	/** True for the name of a group of rows. */
	readonly heading?: boolean;
	/** What is wrong with the text of this very cell. */
	readonly problems?: readonly Problem[];
	/** True where the number waits for something put right elsewhere. */
	readonly waiting?: boolean;
	/** The figures shown, so that they can be asked "why?". */
	readonly figures?: readonly Figure<unknown>[];
	readonly entry?: Entry;
}

export interface GridColumn {
	readonly key: string;
	readonly label: string;
	readonly unit: string;
	readonly numeric: boolean;
	/** Width on screen, in pixels. */
	readonly width: number;
	readonly options?: readonly string[];
}

/** A change that a person asks for: text for one cell of the model. */
export interface CellText {
	readonly row: number;
	readonly column: number;
	readonly text: string;
}

/** A sheet laid out in cells. Made anew from the state at each change; holds nothing. */
export interface GridModel {
	/** What a screen reader calls the grid. */
	readonly name: string;
	readonly columns: readonly GridColumn[];
	readonly rowCount: number;
	/** True where the last row is an empty one, to go on in. */
	readonly openEnd?: boolean;
	/** Height of the column names on screen, in pixels. */
	readonly headerHeight: number;
	/** Height of a row on screen, in pixels; as of most rows, as long as nobody knows better. */
	rowHeight(row: number): number;
	/** Looks how high some rows more are. Absent where all are known. @returns whether there are more to look at */
	measureOn?(): boolean;
	/** Number in the margin: the line of the file. Absent where rows are no lines. */
	rowName?(row: number): string;
	/** True for the last row of a group: a stronger line is drawn beneath. */
	endsGroup?(row: number): boolean;
	/** What a cell stands for, to sort by; undefined where it is blank or cannot be understood. */
	value?(row: number, column: number): unknown;
	cell(row: number, column: number): GridCell;
}

const nothing: GridCell = { kind: "label", text: "" };

/** The cell's words for a person who hears them: column, row, value, state. */
export function spoken(model: GridModel, row: number, column: number): string {
	const { label, unit } = model.columns[column] ?? { label: "", unit: "" };
	const cell = column < model.columns.length ? model.cell(row, column) : nothing;
	const first = model.cell(row, 0);
	const parts = [
		column === 0 ? "" : first.text,
		unit ? `${label}, ${unit}` : label,
		cell.text || say`blank`,
		cell.beneath ?? "",
		cell.problems?.[0] ? problemWords(cell.problems[0]) : "",
		cell.kind === "typed" ? say`can be edited` : say`locked`,
	];
	return parts.filter((part) => part !== "").join(semicolon);
}

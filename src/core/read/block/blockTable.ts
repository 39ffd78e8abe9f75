import type { Column } from "../../column.ts";
import type { Place } from "../../problem.ts";
import type { Sheet } from "../../sheet.ts";
import type { TextTable } from "../../workbook.ts";

/** A sheet that came in from another program, as text. */
export interface BlockTable {
	readonly sheet: Sheet;
	readonly table: TextTable;
	/** What stood between its cells; absent where nothing did, as in a spreadsheet's own file. */
	readonly separator?: "," | ";" | "\t" | undefined;
	/** Set where this program wrote it, with decimal points: they tell nothing of who typed into it. */
	readonly isOurs?: boolean;
	/** Whether a cell was a number before it was text, as in a spreadsheet's own file: it has a decimal point, whatever stands around it. */
	readonly isNumber?: (row: number, at: number) => boolean;
}

/** A custom that holds for a whole block: which mark is the decimal one, what stands first in a date. */
export interface Customs {
	readonly numbers?: "point" | "comma";
	readonly dates?: "day-first" | "month-first";
}

/** One cell of a block with the column that says what it may hold. */
export interface BlockCell {
	readonly row: number;
	readonly at: number;
	readonly text: string;
	readonly column: Column<unknown>;
	readonly place: Place;
	/** Set where it was a number before it was text. */
	readonly isNumber?: true;
}

/** A cell that was written anew in the clear form. */
export interface Rewritten {
	readonly place: Place;
	readonly text: string;
	readonly clear: string;
}

/** What only the person who gave the block can know: one cell with both its readings. */
export interface Question {
	readonly about: "numbers" | "dates";
	readonly place: Place;
	readonly label: string;
	readonly text: string;
	/** The text in the clear form of the files: with point and comma, or with day and month first. */
	readonly readings: readonly [string, string];
}

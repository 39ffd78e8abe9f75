import type { TextTable } from "../../core/workbook.ts";
import { LONGEST_CELL, MOST_CELLS, MOST_COLUMNS, MOST_ROWS } from "../csvProblems.ts";
import { unguarded } from "../guarded.ts";

/** One sheet of a spreadsheet as text. */
export interface SpreadsheetSheet {
	readonly name: string;
	readonly table: TextTable;
	/** Whether a cell held a number and not text: it stands with a decimal point, whatever the other cells do. */
	isNumber(row: number, at: number): boolean;
}

/** A sheet is larger than any of a workbook. */
export class TooLarge extends Error {}

/** Gathers the cells of one sheet, wherever they stand. */
export class CellsOfSheet {
	readonly #name: string;
	readonly #rows: string[][] = [];
	readonly #numbers = new Set<number>();
	#cells = 0;

	constructor(name: string) {
		this.#name = name;
	}

	/** @throws TooLarge */
	put(row: number, at: number, text: string, isNumber: boolean): void {
		if (text.trim() === "") return;
		if (row > MOST_ROWS || at >= MOST_COLUMNS || text.length > LONGEST_CELL) throw new TooLarge();
		this.#rows[row] ??= [];
		const cells = this.#rows[row] as string[];
		this.#cells += Math.max(0, at + 1 - cells.length);
		if (this.#cells > MOST_CELLS) throw new TooLarge();
		while (cells.length < at) cells.push("");
		cells[at] = unguarded(text);
		if (isNumber) this.#numbers.add(row * MOST_COLUMNS + at);
	}

	/** The first row with text is the header; what stands beneath it keeps its row of the sheet as line. */
	sheet(): SpreadsheetSheet {
		const filled = Array.from(this.#rows, (cells) => cells ?? []);
		const top = Math.max(
			0,
			filled.findIndex((cells) => cells.length > 0),
		);
		const [header = [], ...rows] = filled.slice(top);
		return {
			name: this.#name,
			table: { header, rows, lines: rows.map((_, row) => top + row + 2) },
			isNumber: (row, at) => this.#numbers.has((top + row + 1) * MOST_COLUMNS + at),
		};
	}
}

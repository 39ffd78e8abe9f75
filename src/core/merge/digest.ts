import type { TextTable } from "../workbook.ts";

const CELL = 31;
const ROW = 30;

/**
 * A short text that two sets of tables share where their texts are the same, and otherwise
 * do not, but by a chance of one in 10^19. Blank cells at the end of a row count as none.
 */
export function digest(tables: Readonly<Record<string, TextTable>>): string {
	let one = 0xdeadbeef;
	let other = 0x41c6ce57;
	const take = (code: number) => {
		one = Math.imul(one ^ code, 0x9e3779b1);
		other = Math.imul(other ^ code, 0x5f356495);
		one ^= one >>> 15;
		other ^= other >>> 13;
	};
	const takeCells = (cells: readonly string[]) => {
		let width = cells.length;
		while (cells[width - 1] === "") width--;
		for (let at = 0; at < width; at++) {
			const cell = cells[at] as string;
			for (let letter = 0; letter < cell.length; letter++) take(cell.charCodeAt(letter));
			take(CELL);
		}
		take(ROW);
	};
	for (const file of Object.keys(tables).sort()) {
		const { header, rows } = tables[file] as TextTable;
		takeCells([file]);
		takeCells(header);
		rows.forEach(takeCells);
	}
	return half(one) + half(other);
}

function half(state: number): string {
	let mixed = Math.imul(state ^ (state >>> 16), 0x85ebca6b);
	mixed = Math.imul(mixed ^ (mixed >>> 13), 0xc2b2ae35);
	return ((mixed ^ (mixed >>> 16)) >>> 0).toString(36).padStart(7, "0");
}

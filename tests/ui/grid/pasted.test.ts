import { expect, test } from "vitest";
import {
	LONGEST_TEXT,
	MOST_PASTED_COLUMNS,
	MOST_PASTED_ROWS,
	MOST_TEXT,
	pasted,
} from "../../../src/ui/grid/pasted.ts";

test("a spreadsheet's block becomes cells from the selected one on", () => {
	const { cells, told } = pasted('1\t"two\nlines"\r\n3\t4\r\n', 5, 2, 9);
	expect(told).toEqual([]);
	expect(cells).toEqual([
		{ row: 5, column: 2, text: "1" },
		{ row: 5, column: 3, text: "two\nlines" },
		{ row: 6, column: 2, text: "3" },
		{ row: 6, column: 3, text: "4" },
	]);
});

test("what is beyond a limit is left out and told", () => {
	const rows = pasted("x\n".repeat(MOST_PASTED_ROWS + 1), 0, 0, 0);
	expect(rows.cells).toHaveLength(MOST_PASTED_ROWS);
	expect(rows.told.join()).toContain("5\u202f001 came");
	const wide = pasted("x\t".repeat(MOST_PASTED_COLUMNS + 5), 0, 0, 200);
	expect(wide.cells).toHaveLength(MOST_PASTED_COLUMNS);
	expect(wide.told).toHaveLength(1);
	const long = pasted(`a\t${"y".repeat(LONGEST_TEXT + 1)}\tb`, 0, 0, 2);
	expect(long.cells.map((cell) => cell.text)).toEqual(["a", "b"]);
	expect(long.told).toHaveLength(1);
});

test("a paste that would stop an old laptop is refused as a whole", () => {
	const { cells, told } = pasted("x".repeat(MOST_TEXT + 1), 0, 0, 3);
	expect(cells).toEqual([]);
	expect(told[0]).toMatch(/^Nothing was pasted/);
});

import assert from "node:assert/strict";
import type { ReadTable } from "../../src/core/read/goodRow.ts";
import { lineOf, type TextTable } from "../../src/core/workbook.ts";

/** Every row that holds any text was understood, or a problem names its line. */
export function expectTable(table: TextTable, read: ReadTable<unknown>): void {
	const understood = new Set(read.rows.map(({ line }) => line));
	const refused = new Map(read.badRows.map(({ line, problems }) => [line, problems]));
	table.rows.forEach((cells, row) => {
		if (cells.every((cell) => cell.trim() === "")) return;
		const line = lineOf(table, row);
		const problems = refused.get(line) ?? [];
		assert.ok(understood.has(line) !== refused.has(line), `line ${line} is lost, or read twice`);
		if (refused.has(line))
			assert.ok(
				problems.some((found) => found.line === line),
				`line ${line} without a reason`,
			);
	});
}

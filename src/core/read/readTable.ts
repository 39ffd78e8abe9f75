import type { Columns } from "../column.ts";
import type { RowOf, Sheet } from "../sheet.ts";
import { lineOf, type TextTable } from "../workbook.ts";
import type { BadRow, GoodRow, ReadTable } from "./goodRow.ts";
import { headerProblems, missingFile } from "./headerProblems.ts";
import { layoutOf, readRow } from "./readRow.ts";
import { refuseDoubles } from "./refuseDoubles.ts";

/**
 * Reads the text of a sheet into typed rows.
 *
 * A row without any text is skipped. A bad cell makes its row a bad row; the
 * other rows stand. Unknown columns are named and otherwise left alone.
 */
export function readTable<C extends Columns>(
	sheet: Sheet<C>,
	table: TextTable | undefined,
	read: typeof readRow = readRow,
): ReadTable<RowOf<Sheet<C>>> {
	type R = RowOf<Sheet<C>>;
	const { file } = sheet;
	if (!table)
		return {
			file,
			rows: [],
			badRows: [],
			problems: sheet.optional ? [] : [missingFile(file)],
			absent: true,
		};
	const names = table.header.map((key) => key.trim());
	const problems = headerProblems(sheet, { ...table, header: names });
	const rows: GoodRow<R>[] = [];
	const badRows: BadRow<R>[] = [];
	const layout = layoutOf(sheet, table.header, names);
	table.rows.forEach((cells, index) => {
		if (cells.every((cell) => cell.trim() === "")) return;
		const { row, surplus } = read(cells, layout, lineOf(table, index));
		if ("problems" in row) badRows.push(row);
		else rows.push(row);
		if (surplus) problems.push(surplus);
	});
	return refuseDoubles(sheet, { file, rows, badRows, problems, absent: false });
}

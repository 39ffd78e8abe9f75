/**
 * A sheet as text, cell by cell, exactly as typed or read.
 *
 * Keeping the text is what makes "nothing typed is ever lost" true: what cannot
 * be understood stays where it is and is written out again.
 */
export interface TextTable {
	readonly header: readonly string[];
	readonly rows: readonly (readonly string[])[];
	/** File line of each row; row number + 2 where absent (header is line 1). */
	readonly lines?: readonly number[];
}

/** A whole workbook: one text table a file. Never changed; an edit makes a new one. */
export interface Workbook {
	readonly tables: Readonly<Record<string, TextTable>>;
}

export function lineOf(table: TextTable, row: number): number {
	return table.lines?.[row] ?? row + 2;
}

/** The workbook with one table replaced; the other tables are the same objects. */
export function withTable(workbook: Workbook, file: string, table: TextTable): Workbook {
	return { tables: { ...workbook.tables, [file]: table } };
}

/** The workbook with one cell replaced. Rows and columns that do not exist yet are made. */
export function withCell(
	workbook: Workbook,
	file: string,
	row: number,
	column: string,
	text: string,
): Workbook {
	const table = workbook.tables[file] ?? { header: [], rows: [] };
	const header = table.header.includes(column) ? table.header : [...table.header, column];
	const at = header.indexOf(column);
	const rows = [...table.rows];
	while (rows.length <= row) rows.push([]);
	const cells = Array.from({ length: header.length }, (_, i) => rows[row]?.[i] ?? "");
	cells[at] = text;
	rows[row] = cells;
	return withTable(workbook, file, { ...table, header, rows });
}

/**
 * A sheet as text, cell by cell, exactly as typed or read.
 *
 * Keeping the text is what makes "nothing typed is ever lost" true: what cannot
 * be understood stays where it is and is written out again.
 */
export interface TextTable {
	/** Keys of columns, those of the format plain: " births" of a file is read as births. */
	readonly header: readonly string[];
	readonly rows: readonly (readonly string[])[];
	/** File line of each row; row number + 2 where absent (header is line 1). */
	readonly lines?: readonly number[];
}

/** A whole workbook: one text table a file. Never changed; an edit makes a new one. */
export interface Workbook {
	readonly tables: Readonly<Record<string, TextTable>>;
	/** Edition of the file format that the texts are in, where it is not the present one. */
	readonly format?: number;
}

export function lineOf(table: TextTable, row: number): number {
	return table.lines?.[row] ?? row + 2;
}

/** The workbook with one table replaced; the other tables are the same objects. */
export function withTable(workbook: Workbook, file: string, table: TextTable): Workbook {
	return { ...workbook, tables: { ...workbook.tables, [file]: table } };
}

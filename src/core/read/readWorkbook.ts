import { memoizeByObject } from "../memoize.ts";
import type { Problem } from "../problem.ts";
import type { RowOf, Sheet } from "../sheet.ts";
import { sheetsByName } from "../sheets/typedSheets.ts";
import type { IsoDate } from "../values/date.ts";
import type { TextTable, Workbook } from "../workbook.ts";
import type { ReadTable } from "./goodRow.ts";
import { readRow, readRowOnce } from "./readRow.ts";
import { readSettings, type Settings } from "./readSettings.ts";
import { readTable } from "./readTable.ts";
import { withRegisterMarks } from "./withRegisterMarks.ts";

/** Of a longer sheet only the rows are read that an edit touched; remembering the rows of short ones would not pay. */
const MANY_ROWS = 50;

/** A table that an edit left alone is the same object as before, and is not read again. */
const readOnce = memoizeByObject((table: TextTable, sheet: Sheet) =>
	readTable(sheet, table, table.rows.length > MANY_ROWS ? readRowOnce : readRow),
);

/** A sheet that no file was given for: the same object whenever it is read. */
const absent = memoizeByObject((sheet: Sheet) => readTable(sheet, undefined));

/** The settings have rows of many kinds; `readSettings` knows them. All other typed sheets are tables. */
const { unit: unitSheet, ...tableSheets } = sheetsByName;

/** Every typed sheet but the settings, with its rows understood. */
export type ReadTables = {
	readonly [K in keyof typeof tableSheets]: ReadTable<RowOf<(typeof tableSheets)[K]>>;
};

function readTables({ tables }: Workbook): ReadTables {
	const read = Object.entries<Sheet>(tableSheets).map(([name, sheet]) => {
		const table = tables[sheet.file];
		return [name, table ? readOnce(table, sheet) : absent(sheet)];
	});
	return withRegisterMarks(Object.fromEntries(read) as ReadTables);
}

/** A workbook with its texts understood, as far as they can be. */
export interface ReadWorkbook {
	readonly settings: Settings;
	readonly tables: ReadTables;
	/** Problems of the reading itself; those of what follows come with the figures. */
	readonly problems: readonly Problem[];
	/** Today, by a clock that is not known to be wrong; absent where no clock was asked. */
	readonly today?: IsoDate;
}

/** The plan, and many a part of a page, reads the same workbook. */
export const readWorkbook = memoizeByObject((workbook: Workbook): ReadWorkbook => {
	const unit = readSettings(workbook.tables[unitSheet.file]);
	const tables = readTables(workbook);
	const problems = Object.values(tables).flatMap((table: ReadTable<unknown>) => [
		...table.problems,
		...table.badRows.flatMap((row) => row.problems),
	]);
	return { settings: unit.settings, tables, problems: [...unit.problems, ...problems] };
});

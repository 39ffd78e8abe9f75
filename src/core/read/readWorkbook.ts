import type { Columns } from "../column.ts";
import { type LotOnHand, onHand } from "../plan/store/onHand.ts";
import type { Problem } from "../problem.ts";
import type { RowOf, Sheet } from "../sheet.ts";
import { birthsSheet } from "../sheets/births.ts";
import { checksSheet } from "../sheets/checks.ts";
import { chlorineSheet } from "../sheets/chlorine.ts";
import { hoursSheet } from "../sheets/hours.ts";
import { itemsSheet } from "../sheets/items.ts";
import { journalSheet } from "../sheets/journal.ts";
import { keptSettingsSheet } from "../sheets/keptSettings.ts";
import { kindsSheet } from "../sheets/kinds.ts";
import { kindUseSheet } from "../sheets/kindUse.ts";
import { kitsSheet } from "../sheets/kits.ts";
import { lotsSheet } from "../sheets/lots.ts";
import { recordsSheet } from "../sheets/records.ts";
import { roundsSheet } from "../sheets/rounds.ts";
import { stepsSheet } from "../sheets/steps.ts";
import { strengthReadingsSheet } from "../sheets/strengthReadings.ts";
import { usageSheet } from "../sheets/usage.ts";
import { wardSolutionSheet } from "../sheets/wardSolution.ts";
import { waterSourcesSheet } from "../sheets/waterSources.ts";
import type { TextTable, Workbook } from "../workbook.ts";
import { readRow, readRowOnce } from "./readRow.ts";
import { readSettings, type Settings } from "./readSettings.ts";
import { type ReadTable, readTable } from "./readTable.ts";

/** Of a longer sheet only the rows are read that an edit touched; remembering the rows of short ones would not pay. */
const MANY_ROWS = 50;

const known = new WeakMap<TextTable, ReadTable<unknown>>();

/** A table that an edit left alone is the same object as before, and is not read again. */
function readOnce<C extends Columns>(
	sheet: Sheet<C>,
	table: TextTable | undefined,
): ReadTable<RowOf<Sheet<C>>> {
	const before = table && known.get(table);
	if (before?.file === sheet.file) return before as ReadTable<RowOf<Sheet<C>>>;
	const isLong = (table?.rows.length ?? 0) > MANY_ROWS;
	const read = readTable(sheet, table, isLong ? readRowOnce : readRow);
	if (table) known.set(table, read);
	return read;
}

function readTables({ tables }: Workbook) {
	return {
		births: readOnce(birthsSheet, tables[birthsSheet.file]),
		hours: readOnce(hoursSheet, tables[hoursSheet.file]),
		rounds: readOnce(roundsSheet, tables[roundsSheet.file]),
		steps: readOnce(stepsSheet, tables[stepsSheet.file]),
		kinds: readOnce(kindsSheet, tables[kindsSheet.file]),
		kindUse: readOnce(kindUseSheet, tables[kindUseSheet.file]),
		kits: readOnce(kitsSheet, tables[kitsSheet.file]),
		usage: readOnce(usageSheet, tables[usageSheet.file]),
		items: readOnce(itemsSheet, tables[itemsSheet.file]),
		chlorine: readOnce(chlorineSheet, tables[chlorineSheet.file]),
		lots: readOnce(lotsSheet, tables[lotsSheet.file]),
		strengthReadings: readOnce(strengthReadingsSheet, tables[strengthReadingsSheet.file]),
		wardSolution: readOnce(wardSolutionSheet, tables[wardSolutionSheet.file]),
		waterSources: readOnce(waterSourcesSheet, tables[waterSourcesSheet.file]),
		journal: readOnce(journalSheet, tables[journalSheet.file]),
		records: readOnce(recordsSheet, tables[recordsSheet.file]),
		checks: readOnce(checksSheet, tables[checksSheet.file]),
		keptSettings: readOnce(keptSettingsSheet, tables[keptSettingsSheet.file]),
	};
}

/** A workbook with its texts understood, as far as they can be. */
export interface ReadWorkbook {
	readonly settings: Settings;
	readonly tables: ReturnType<typeof readTables>;
	/** The lots as the journal leaves them; `tables.lots` has the same quantities. */
	readonly lotsOnHand: readonly LotOnHand[];
	/** Problems of the reading itself; those of what follows come with the figures. */
	readonly problems: readonly Problem[];
}

export function readWorkbook(workbook: Workbook): ReadWorkbook {
	const unit = readSettings(workbook.tables["unit.csv"]);
	const asWritten = readTables(workbook);
	const { lots, journal } = asWritten;
	const lotsOnHand = lots.rows.map((lot) => onHand(lot, journal.rows));
	const tables = { ...asWritten, lots: { ...lots, rows: lotsOnHand.map(withQuantity) } };
	const problems = Object.values(tables).flatMap((table: ReadTable<unknown>) => [
		...table.problems,
		...table.badRows.flatMap((row) => row.problems),
	]);
	return {
		settings: unit.settings,
		tables,
		lotsOnHand,
		problems: [...unit.problems, ...problems],
	};
}

function withQuantity({ lot, quantity }: LotOnHand): LotOnHand["lot"] {
	return { ...lot, value: { ...lot.value, quantity } };
}

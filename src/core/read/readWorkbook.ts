import type { Problem } from "../problem.ts";
import { birthsSheet } from "../sheets/births.ts";
import { checksSheet } from "../sheets/checks.ts";
import { chlorineSheet } from "../sheets/chlorine.ts";
import { hoursSheet } from "../sheets/hours.ts";
import { itemsSheet } from "../sheets/items.ts";
import { journalSheet } from "../sheets/journal.ts";
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
import { type LotOnHand, onHand } from "../stock/onHand.ts";
import type { Workbook } from "../workbook.ts";
import { readSettings, type Settings } from "./readSettings.ts";
import { type ReadTable, readTable } from "./readTable.ts";

function readTables({ tables }: Workbook) {
	return {
		births: readTable(birthsSheet, tables[birthsSheet.file]),
		hours: readTable(hoursSheet, tables[hoursSheet.file]),
		rounds: readTable(roundsSheet, tables[roundsSheet.file]),
		steps: readTable(stepsSheet, tables[stepsSheet.file]),
		kinds: readTable(kindsSheet, tables[kindsSheet.file]),
		kindUse: readTable(kindUseSheet, tables[kindUseSheet.file]),
		kits: readTable(kitsSheet, tables[kitsSheet.file]),
		usage: readTable(usageSheet, tables[usageSheet.file]),
		items: readTable(itemsSheet, tables[itemsSheet.file]),
		chlorine: readTable(chlorineSheet, tables[chlorineSheet.file]),
		lots: readTable(lotsSheet, tables[lotsSheet.file]),
		strengthReadings: readTable(strengthReadingsSheet, tables[strengthReadingsSheet.file]),
		wardSolution: readTable(wardSolutionSheet, tables[wardSolutionSheet.file]),
		waterSources: readTable(waterSourcesSheet, tables[waterSourcesSheet.file]),
		journal: readTable(journalSheet, tables[journalSheet.file]),
		records: readTable(recordsSheet, tables[recordsSheet.file]),
		checks: readTable(checksSheet, tables[checksSheet.file]),
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

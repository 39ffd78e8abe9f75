import type { Problem } from "../problem.ts";
import type { GoodRow } from "../read/goodRow.ts";
import { readTable } from "../read/readTable.ts";
import { type KeptSettingsRow, keptSettingsSheet } from "../sheets/keptSettings.ts";
import type { Workbook } from "../workbook.ts";

/** A named copy of the unit's settings and rounds, kept in the workbook itself. */
export interface KeptCopy {
	readonly name: string;
	readonly rows: readonly GoodRow<KeptSettingsRow>[];
	/** Rows of it that could not be understood: with any, the copy cannot be used. */
	readonly problems: readonly Problem[];
}

/** The copies of a workbook, in the order in which they were kept. */
export function keptCopies(workbook: Workbook): KeptCopy[] {
	const { rows, badRows } = readTable(keptSettingsSheet, workbook.tables[keptSettingsSheet.file]);
	const names = new Set([...rows, ...badRows].flatMap(({ value }) => value.name ?? []));
	return [...names].map((name) => ({
		name,
		rows: rows.filter(({ value }) => value.name === name),
		problems: badRows.filter(({ value }) => value.name === name).flatMap((row) => row.problems),
	}));
}

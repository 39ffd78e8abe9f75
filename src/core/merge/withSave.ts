import { sheetOf } from "../sheets/sheetOf.ts";
import type { TextTable, Workbook } from "../workbook.ts";
import { columnNames } from "./columnNames.ts";
import type { Descent, Save, SheetDescent } from "./descent.ts";
import { pairedEdits } from "./pairedEdits.ts";
import { ALONE } from "./pairs.ts";
import { bornTogether } from "./rootDescent.ts";

/**
 * The descent of a workbook that goes on from a state by one save; the same one where
 * nothing changed since.
 *
 * @param tables in the clear form of the files
 */
export function withSave(before: Descent, { tables }: Workbook, save: Save): Descent {
	const sheets = Object.entries(tables).map(([file, table]): [string, SheetDescent] => {
		const was = before.sheets[file];
		return [file, was ? sheetWithSave(file, was, table, save.id) : bornTogether(table, save.id)];
	});
	if (sheets.every(([file, now]) => now === before.sheets[file])) return before;
	return { saves: [...before.saves, save], sheets: Object.fromEntries(sheets) };
}

function sheetWithSave(file: string, was: SheetDescent, table: TextTable, save: string) {
	if (was.table === table || isSameText(was.table, table)) return was;
	const { ofOne, ofOther } = pairedEdits(sheetOf(file), was.table, table);
	const changed = new Map(was.changed);
	const gone = new Map(was.gone);
	const cells = cellsOf(was.table, table);
	const origins = table.rows.map((row, at) => {
		const before = ofOther[at] as number;
		// By its place, as in `bornTogether`: a save known by its content may have come about either way.
		if (before === ALONE) return `${save}.${at}`;
		const origin = was.origins[before] as string;
		const columns = cells(was.table.rows[before] as readonly string[], row);
		if (columns.length > 0)
			changed.set(
				origin,
				new Map([...(changed.get(origin) ?? []), ...columns.map((c) => [c, save] as const)]),
			);
		return origin;
	});
	ofOne.forEach((partner, row) => {
		const origin = was.origins[row] as string;
		if (partner !== ALONE) return;
		gone.set(origin, save);
		changed.delete(origin);
	});
	return { table, origins, changed, gone };
}

/** What gives the columns in which two rows differ. */
function cellsOf(one: TextTable, other: TextTable) {
	const [of, to] = [columnNames(one), columnNames(other)];
	const names = [...new Set([...of, ...to])];
	const places = names.map((name) => [name, of.indexOf(name), to.indexOf(name)] as const);
	return (a: readonly string[], b: readonly string[]): string[] =>
		a === b && one.header === other.header
			? []
			: places.flatMap(([name, x, y]) => ((a[x] ?? "") === (b[y] ?? "") ? [] : [name]));
}

function isSameText(one: TextTable, other: TextTable): boolean {
	const isSame = (a: readonly string[], b: readonly string[]) =>
		a.length === b.length && a.every((cell, at) => cell === b[at]);
	return (
		isSame(one.header, other.header) &&
		one.rows.length === other.rows.length &&
		one.rows.every((row, at) => isSame(row, other.rows[at] as readonly string[]))
	);
}

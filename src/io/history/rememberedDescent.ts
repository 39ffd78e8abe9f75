import type { Descent, Save, SheetDescent } from "../../core/merge/descent.ts";
import { digest } from "../../core/merge/digest.ts";
import { rootDescent, unknownDescent } from "../../core/merge/rootDescent.ts";
import type { TextTable, Workbook } from "../../core/workbook.ts";
import type { History, SheetHistory } from "./historyFile.ts";

/**
 * The descent of a workbook by what its files remember. A sheet that is not as it was saved
 * (another program changed it, or it is damaged) counts as one of which nothing is known.
 *
 * @param workbook in the clear form of the files
 */
export function rememberedDescent(workbook: Workbook, history: History | undefined): Descent {
	if (!history || history.saves.length === 0) return rootDescent(workbook);
	const saves: Save[] = history.saves.map(([id, at, by]) => ({ id, at, by }));
	const altered: Save[] = [];
	const sheets = Object.entries(workbook.tables).map(([file, table]): [string, SheetDescent] => {
		const kept = Object.hasOwn(history.sheets, file) ? history.sheets[file] : undefined;
		if (kept && isAbout(kept, file, table)) return [file, sheetDescent(kept, table, saves)];
		const { save, descent } = unknownDescent(file, table);
		altered.push(save);
		return [file, descent];
	});
	const known = new Map([...saves, ...altered].map((save) => [save.id, save]));
	return { saves: [...known.values()], sheets: Object.fromEntries(sheets) };
}

function isAbout({ rows, digest: of }: SheetHistory, file: string, table: TextTable): boolean {
	const count = rows.reduce((sum, [, , rowsOfRun]) => sum + rowsOfRun, 0);
	return count === table.rows.length && of === digest({ [file]: table });
}

function sheetDescent(
	{ rows, changed, gone }: SheetHistory,
	table: TextTable,
	saves: readonly Save[],
): SheetDescent {
	const idOf = (save: number) => saves[save]?.id ?? "";
	const originsOf = ([save, first, count]: readonly [number, number, number, number?]) =>
		Array.from({ length: count }, (_, at) => `${idOf(save)}.${first + at}`);
	const origins = rows.flatMap(originsOf);
	const cells = new Map<string, Map<string, string>>();
	for (const [row, count, column, save] of changed)
		for (const origin of origins.slice(row, row + count)) {
			const columns = cells.get(origin) ?? new Map<string, string>();
			cells.set(origin, columns.set(column, idOf(save)));
		}
	const deleted = gone.flatMap((run) =>
		originsOf(run).map((origin) => [origin, idOf(run[3])] as const),
	);
	return { table, origins, changed: cells, gone: new Map(deleted) };
}

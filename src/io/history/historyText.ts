import { bornIn, type Descent, type SheetDescent } from "../../core/merge/descent.ts";
import { digest } from "../../core/merge/digest.ts";
import { historyDigest } from "./historyDigest.ts";
import { HISTORY_EDITION, type History, type Run, type SheetHistory } from "./historyFile.ts";

/**
 * The descent of a workbook as a file beside its sheets. Rows that were entered together
 * take one entry, so that it stays small beside what it remembers.
 */
export function historyText({ saves, sheets }: Descent): string {
	const places = new Map(saves.map(({ id }, at) => [id, at]));
	const placeOf = (save: string) => places.get(save) ?? 0;
	const remembered = {
		saves: saves.map(({ id, at, by }) => [id, at, by]),
		sheets: Object.fromEntries(
			Object.entries(sheets).map(([file, sheet]) => [file, sheetHistory(file, sheet, placeOf)]),
		),
	} satisfies Partial<History>;
	const history: History = {
		basinbook_history: HISTORY_EDITION,
		digest: historyDigest(remembered),
		...remembered,
	};
	return `${JSON.stringify(history)}\n`;
}

function sheetHistory(
	file: string,
	{ table, origins, changed, gone }: SheetDescent,
	placeOf: (save: string) => number,
): SheetHistory {
	const runOf = (origin: string): Run => [placeOf(bornIn(origin)), numberOf(origin), 1];
	const byColumn = [...changedCells(origins, changed, placeOf)].sort(
		([row, , column], [other, , otherColumn]) =>
			column === otherColumn ? row - other : column < otherColumn ? -1 : 1,
	);
	return {
		digest: digest({ [file]: table }),
		rows: joined(origins.map(runOf), ([save, first, count], [next, number]) =>
			save === next && number === first + count ? [save, first, count + 1] : undefined,
		),
		changed: joined(byColumn, ([row, count, column, save], [next, , other, otherSave]) =>
			column === other && save === otherSave && next === row + count
				? [row, count + 1, column, save]
				: undefined,
		),
		gone: joined(
			[...gone].map(([origin, save]) => [...runOf(origin), placeOf(save)] as const),
			([save, first, count, goneIn], [next, number, , nextGone]) =>
				save === next && number === first + count && goneIn === nextGone
					? [save, first, count + 1, goneIn]
					: undefined,
		),
	};
}

function* changedCells(
	origins: SheetDescent["origins"],
	changed: SheetDescent["changed"],
	placeOf: (save: string) => number,
): Generator<SheetHistory["changed"][number]> {
	for (const [row, origin] of origins.entries())
		for (const [column, save] of changed.get(origin) ?? []) yield [row, 1, column, placeOf(save)];
}

/** The number of a row in the save it was first in. */
function numberOf(origin: string): number {
	return Number(origin.slice(origin.lastIndexOf(".") + 1));
}

/** A list in which neighbours that can be one entry are one. */
function joined<T>(all: readonly T[], join: (last: T, next: T) => T | undefined): T[] {
	const list: T[] = [];
	for (const next of all) {
		const last = list.at(-1);
		const one = last === undefined ? undefined : join(last, next);
		if (one === undefined) list.push(next);
		else list[list.length - 1] = one;
	}
	return list;
}

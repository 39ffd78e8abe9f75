import { lineBreaks } from "../lineBreaks.ts";
import { sheetOf } from "../sheets/sheetOf.ts";
import { withoutBlankEnds } from "../withoutBlankEnds.ts";
import { columnNames, isStray } from "./columnNames.ts";
import type { Change, Choices, Conflict } from "./conflict.ts";
import { bornIn, type SheetDescent } from "./descent.ts";
import { mergeAlone } from "./mergeAlone.ts";
import { type MergedPlace, mergedPlaces } from "./mergedPlaces.ts";
import { mergePair } from "./mergePair.ts";
import { pairedRows, type Takes } from "./pairedRows.ts";
import { ALONE, noPairs, type Pairs, pair } from "./pairs.ts";
import type { RowMerged } from "./rowMerged.ts";
import { rowName } from "./rowName.ts";
import type { MergedColumn, SheetSide, SheetSides } from "./sheetSide.ts";

export interface MergedSheet {
	readonly descent: SheetDescent;
	readonly conflicts: readonly Conflict[];
	readonly changes: readonly Change[];
}

/** Brings two copies of one sheet together. */
export function mergeSheet(
	file: string,
	ours: SheetSide,
	theirs: SheetSide,
	choices: Choices,
): MergedSheet {
	const { columns, header } = columnsOf(ours, theirs);
	const sides = { file, ours, theirs, columns, choices, nameOf: rowName(sheetOf(file)) };
	const rows: (readonly string[])[] = [];
	const origins: string[] = [];
	const changed = new Map<string, ReadonlyMap<string, string>>();
	const conflicts: Conflict[] = [];
	const changes: Change[] = [];
	let nextLine = 1 + linesOf(header);
	const textOf = ({ descent }: SheetSide, at: number) =>
		(descent.table.rows[at] as readonly string[]).join("\n");
	const places = mergedPlaces(
		pairsOf(file, ours, theirs),
		(at) => textOf(ours, at),
		(at) => textOf(theirs, at),
	);
	for (const place of places) {
		const merged = mergeRow(sides, place);
		const line = merged.cells ? nextLine : null;
		for (const conflict of merged.conflicts) conflicts.push({ ...conflict, line });
		for (const change of merged.changes) changes.push(change);
		if (!merged.cells) continue;
		rows.push(merged.cells);
		nextLine += linesOf(merged.cells);
		origins.push(merged.origin);
		if (merged.changed.size > 0) changed.set(merged.origin, merged.changed);
	}
	// A column without a name may have lost its last text: a file that is read again has none.
	const table = withoutBlankEnds({ header, rows });
	const kept = origins.slice(0, table.rows.length);
	const gone = new Map([...theirs.descent.gone, ...ours.descent.gone]);
	for (const origin of kept) gone.delete(origin);
	return {
		descent: { table, origins: kept, changed, gone },
		conflicts,
		changes,
	};
}

/** Lines that a row takes in the file. */
function linesOf(cells: readonly string[]): number {
	return cells.reduce((lines, cell) => lines + lineBreaks(cell), 1);
}

function mergeRow(sides: SheetSides, { ours, theirs }: MergedPlace): RowMerged {
	if (theirs === ALONE) return mergeAlone(sides, "ours", ours);
	if (ours === ALONE) return mergeAlone(sides, "theirs", theirs);
	return mergePair(sides, ours, theirs);
}

/**
 * Rows of one origin are one. Of all others what they say decides; but of two rows, each
 * of which the other copy says it deleted, neither is the other.
 */
function pairsOf(file: string, ours: SheetSide, theirs: SheetSide): Pairs {
	const [one, other] = [ours.descent, theirs.descent];
	const pairs = noPairs(one.table, other.table);
	const places = new Map(other.origins.map((origin, at) => [origin, at]));
	one.origins.forEach((origin, at) => {
		const partner = places.get(origin);
		if (partner !== undefined) pair(pairs, at, partner);
	});
	const isNew = (from: SheetSide, to: SheetSide, wanted: boolean): Takes => {
		return (row) => {
			const origin = from.descent.origins[row] as string;
			return !(to.saves.has(bornIn(origin)) && to.descent.gone.has(origin)) === wanted;
		};
	};
	for (const [our, their] of [
		[true, true],
		[true, false],
		[false, true],
	] as const)
		pairedRows(sheetOf(file), one.table, other.table, pairs, [
			isNew(ours, theirs, our),
			isNew(theirs, ours, their),
		]);
	return pairs;
}

/** Our columns, then those that only the other copy has; cells beyond the header stay beyond it. */
function columnsOf(ours: SheetSide, theirs: SheetSide) {
	const [one, other] = [ours.descent.table, theirs.descent.table];
	const [of, to] = [columnNames(one), columnNames(other)];
	const names = [...of, ...to.filter((name) => !of.includes(name))];
	const inOrder = [...names.filter((name) => !isStray(name)), ...names.filter(isStray)];
	const columns: MergedColumn[] = inOrder.map((name) => ({
		name,
		ours: of.indexOf(name),
		theirs: to.indexOf(name),
	}));
	const added = other.header.filter((_, at) => !of.includes(to[at] as string));
	return { columns, header: added.length > 0 ? [...one.header, ...added] : one.header };
}

import type { Change, Conflict } from "./conflict.ts";
import { type CellState, decided } from "./decided.ts";
import { bornIn } from "./descent.ts";
import type { RowMerged } from "./rowMerged.ts";
import {
	cellsIn,
	type MergedColumn,
	nameOfRow,
	rowOf,
	type SheetSides,
	type SideRow,
} from "./sheetSide.ts";

/** Brings a row together that both copies have, cell by cell. */
export function mergePair(sides: SheetSides, ourRow: number, theirRow: number): RowMerged {
	const ours = rowOf(sides.ours, ourRow);
	const theirs = rowOf(sides.theirs, theirRow);
	const origin = [ours.origin, theirs.origin].sort()[0] as string;
	const own = cellsIn(sides.columns, ours);
	if (isUntouched(ours, theirs))
		return { cells: own, origin, changed: ours.changed, conflicts: [], changes: [] };
	const born = bornIn(origin);
	// Of a row that neither has from the other, or that another program wrote anew, it is not known.
	const isShared = ours.origin === theirs.origin && !isUnsure(ours, theirs);
	const conflicts: Omit<Conflict, "line">[] = [];
	const changes: Change[] = [];
	const changed = new Map<string, string>();
	const cells = sides.columns.map((column): string => {
		const our = stateOf(ours, theirs, column);
		const their = stateOf(theirs, ours, column);
		const found = decided(our, their);
		const key = `${sides.file} ${ourRow} ${theirRow} ${column.name}`;
		const side = found === "open" ? (sides.choices.get(key) ?? "ours") : found;
		const [taken, left] = side === "ours" ? [our, their] : [their, our];
		const place = { file: sides.file, column: column.name };
		if (found === "open")
			conflicts.push({
				...place,
				...(!(isShared && our.isNew && their.isNew) && { unsure: true }),
				key,
				row: nameOfRow(sides, ours),
				ours: { text: our.text, save: sides.ours.saves.get(our.save) },
				theirs: { text: their.text, save: sides.theirs.saves.get(their.save) },
			});
		else if (our.text.trim() !== their.text.trim())
			changes.push({
				...place,
				from: side,
				kind: "changed",
				row: nameOfRow(sides, ours),
				before: left.text,
				after: taken.text,
			});
		const isOld = our.text === their.text && (our.save === born || their.save === born);
		if (!isOld && taken.save !== born) changed.set(column.name, taken.save);
		return taken.text;
	});
	const isOurs = sides.columns.every((column, at) => cells[at] === (ours.cells[column.ours] ?? ""));
	return { cells: isOurs ? own : cells, origin, changed, conflicts, changes };
}

/** Then it says the same in both: a memory by which it does not is not believed (`isContradictory.ts`). */
function isUntouched(ours: SideRow, theirs: SideRow): boolean {
	return ours.origin === theirs.origin && ours.changed.size === 0 && theirs.changed.size === 0;
}

function textIn({ cells, side }: SideRow, column: MergedColumn): string {
	return cells[column[side]] ?? "";
}

function isUnsure(row: SideRow, other: SideRow): boolean {
	return (row.descent.altered ?? other.descent.altered) !== undefined;
}

function stateOf(row: SideRow, other: SideRow, column: MergedColumn): CellState {
	const text = textIn(row, column);
	const stamp = row.changed.get(column.name);
	const save = stamp ?? bornIn(row.origin);
	return {
		text,
		save,
		isNew: isUnsure(row, other) || !other.saves.has(save),
		neverFilled: text.trim() === "" && stamp === undefined && row.origin !== other.origin,
	};
}

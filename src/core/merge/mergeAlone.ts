import { bornIn } from "./descent.ts";
import type { RowMerged } from "./rowMerged.ts";
import {
	cellsIn,
	nameOfRow,
	rowOf,
	type SheetSide,
	type SheetSides,
	type SideRow,
} from "./sheetSide.ts";

/**
 * What becomes of a row that one copy has: it is an addition, unless the other copy has
 * seen it and deleted it. Deleted there and changed here, a person chooses.
 */
export function mergeAlone(sides: SheetSides, from: "ours" | "theirs", at: number): RowMerged {
	const row = rowOf(sides[from], at);
	const elsewhere = from === "ours" ? sides.theirs : sides.ours;
	const name = nameOfRow(sides, row);
	const change = { file: sides.file, row: name } as const;
	const kept = {
		cells: cellsIn(sides.columns, row),
		origin: row.origin,
		changed: row.changed,
		conflicts: [],
		changes: [{ ...change, from, kind: "added" }],
	} satisfies RowMerged;
	if (!isDeleted(row, elsewhere)) return kept;
	const latest = latestUnseen(row, elsewhere);
	const gone = {
		...kept,
		cells: undefined,
		changes: [{ ...change, from: elsewhere.side, kind: "deleted" }],
	} satisfies RowMerged;
	if (latest === undefined) return gone;
	const key = `${sides.file} ${from} ${at}`;
	const text = row.cells.filter((cell) => cell.trim() !== "").join(", ");
	const said = { text, save: row.saves.get(latest) };
	const without = {
		text: undefined,
		save: elsewhere.saves.get(elsewhere.descent.gone.get(row.origin) as string),
	};
	const conflict = {
		key,
		file: sides.file,
		column: "",
		row: name,
		ours: from === "ours" ? said : without,
		theirs: from === "ours" ? without : said,
	};
	const stays = (sides.choices.get(key) ?? "ours") === from;
	return { ...(stays ? kept : gone), changes: [], conflicts: [conflict] };
}

/**
 * The other copy knew the row and says when it was deleted, and this copy did not know of
 * that. A row that is merely not there is none of it: what a copy remembers may be damaged.
 */
function isDeleted({ origin, saves }: SideRow, { descent, saves: theirs }: SheetSide): boolean {
	const deletedIn = descent.gone.get(origin);
	return (
		!descent.altered &&
		deletedIn !== undefined &&
		!saves.has(deletedIn) &&
		theirs.has(bornIn(origin))
	);
}

/** The last save in which the row was changed and which the other copy has not seen. */
function latestUnseen({ changed, saves }: SideRow, other: SheetSide): string | undefined {
	const unseen = new Set([...changed.values()].filter((save) => !other.saves.has(save)));
	return [...saves.keys()].findLast((save) => unseen.has(save));
}

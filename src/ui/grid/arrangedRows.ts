import { language } from "../../core/language.ts";
import type { Arrangement } from "./arrangement.ts";
import { folded } from "./folded.ts";
import { foldedCell } from "./foldedCell.ts";
import type { GridModel } from "./gridModel.ts";

const collator = new Intl.Collator(language, { numeric: true, sensitivity: "base" });

/** What is understood stands before what is not, and blanks stand last, whichever way is sorted. */
const UNDERSTOOD = 0;
const AS_TYPED = 1;
const BLANK = 2;

interface Placed {
	readonly row: number;
	readonly rank: number;
	readonly value: unknown;
}

/**
 * The rows of a sheet that an arrangement shows, in its order; rows that compare
 * alike keep the order of the file. The empty row to go on in stays last.
 */
export function arrangedRows(model: GridModel, arrangement: Arrangement): number[] {
	const last = model.rowCount - (model.openEnd ? 1 : 0);
	const rows = Array.from({ length: last }, (_, row) => row).filter(holds(model, arrangement));
	const at = model.columns.findIndex(({ key }) => key === arrangement.by);
	const way = arrangement.descending ? -1 : 1;
	const sorted =
		at < 0
			? rows
			: rows
					.map((row) => placed(model, row, at))
					.sort((a, b) => a.rank - b.rank || way * compared(a.value, b.value))
					.map(({ row }) => row);
	return model.openEnd ? [...sorted, last] : sorted;
}

/** True for rows that contain the wanted text. */
function holds(model: GridModel, { among, contains }: Arrangement): (row: number) => boolean {
	const wanted = folded(contains.trim());
	if (wanted === "") return () => true;
	const columns = model.columns.flatMap(({ key }, at) =>
		among === "" || key === among ? [at] : [],
	);
	return (row) => columns.some((column) => foldedCell(model, row, column).includes(wanted));
}

function placed(model: GridModel, row: number, column: number): Placed {
	const { text, raw = text, waiting } = model.cell(row, column);
	const value = model.value?.(row, column);
	if (raw.trim() === "" || waiting) return { row, rank: BLANK, value: "" };
	return { row, rank: value === undefined ? AS_TYPED : UNDERSTOOD, value: value ?? raw };
}

function compared(a: unknown, b: unknown): number {
	return typeof a === "number" && typeof b === "number"
		? a - b
		: collator.compare(String(a), String(b));
}

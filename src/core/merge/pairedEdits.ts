import type { Sheet } from "../sheet.ts";
import type { TextTable } from "../workbook.ts";
import { alikeness } from "./alikeness.ts";
import { pairAlike } from "./pairAlike.ts";
import { pairedRows } from "./pairedRows.ts";
import { ALONE, noPairs, type Pairs, pair } from "./pairs.ts";

/**
 * Which row of a sheet was which before it was edited: the same object, the same texts, the
 * same name; and of lines without a name, one in the same place that still says half of it.
 */
export function pairedEdits(sheet: Sheet | undefined, was: TextTable, now: TextTable): Pairs {
	const pairs = noPairs(was, now);
	const places = new Map(was.rows.map((row, at) => [row, at]));
	now.rows.forEach((row, at) => {
		const before = places.get(row);
		if (before !== undefined && pairs.ofOne[before] === ALONE) pair(pairs, before, at);
	});
	pairedRows(sheet, was, now, pairs);
	if (!sheet?.unique) pairInPlace(sheet, was, now, pairs);
	return pairs;
}

/** Of the rows left alone between two that are known, those that are most alike are one. A line with a mark is no other line. */
function pairInPlace(sheet: Sheet | undefined, was: TextTable, now: TextTable, pairs: Pairs): void {
	const alike = alikeness(was, now);
	const [idWas, idNow] = [was, now].map((table) => markAt(sheet, table)) as [MarkAt, MarkAt];
	let last = -1;
	for (let at = 0; at < now.rows.length; at++) {
		const partner = pairs.ofOther[at] as number;
		if (partner !== ALONE) {
			last = partner;
			continue;
		}
		const fresh = run(pairs.ofOther, at);
		const before = run(pairs.ofOne, last + 1).filter((row) => idWas(row) === "");
		const unmarked = fresh.filter((row) => idNow(row) === "");
		pairAlike(pairs, before, unmarked, alike);
		at += fresh.length - 1;
	}
}

type MarkAt = (row: number) => string;

function markAt(sheet: Sheet | undefined, { header, rows }: TextTable): MarkAt {
	const at = sheet && "id" in sheet.columns ? header.findIndex((key) => key.trim() === "id") : -1;
	return (row) => rows[row]?.[at]?.trim() ?? "";
}

/** Rows alone from one on. */
function run(partners: Int32Array, from: number): number[] {
	const rows: number[] = [];
	for (let row = from; partners[row] === ALONE; row++) rows.push(row);
	return rows;
}

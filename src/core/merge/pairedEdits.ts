import type { Sheet } from "../sheet.ts";
import type { TextTable } from "../workbook.ts";
import { columnNames } from "./columnNames.ts";
import { ALONE, noPairs, type Pairs, pair, pairedRows } from "./pairedRows.ts";

/** So many rows are looked through for the one that a changed row was before. */
const NEAR = 20;
const HALF = 0.5;

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
	if (!sheet?.unique) pairInPlace(was, now, pairs);
	return pairs;
}

/** Of the rows left alone between two that are known, those that are most alike are one. */
function pairInPlace(was: TextTable, now: TextTable, pairs: Pairs): void {
	const alike = alikeness(was, now);
	let last = -1;
	for (let at = 0; at < now.rows.length; at++) {
		const partner = pairs.ofOther[at] as number;
		if (partner !== ALONE) {
			last = partner;
			continue;
		}
		const fresh = run(pairs.ofOther, at);
		const found = run(pairs.ofOne, last + 1)
			.flatMap((before) => fresh.map((row) => ({ before, row, share: alike(before, row) })))
			.filter(({ share }) => share >= HALF)
			.sort((one, other) => other.share - one.share);
		for (const { before, row } of found)
			if (pairs.ofOne[before] === ALONE && pairs.ofOther[row] === ALONE) pair(pairs, before, row);
		at += fresh.length - 1;
	}
}

/** Rows alone from one on, as many as are looked through. */
function run(partners: Int32Array, from: number): number[] {
	const rows: number[] = [];
	for (let row = from; partners[row] === ALONE && rows.length < NEAR; row++) rows.push(row);
	return rows;
}

/** What gives the share of texts that two rows have in common; a line with an id is no other one. */
function alikeness(was: TextTable, now: TextTable) {
	const [of, to] = [columnNames(was), columnNames(now)];
	const places = to.map((name, at) => ({ name, at, before: of.indexOf(name) }));
	return (before: number, row: number): number => {
		let [same, all] = [0, 0];
		for (const place of places) {
			const then = was.rows[before]?.[place.before]?.trim() ?? "";
			const text = now.rows[row]?.[place.at]?.trim() ?? "";
			if (then === "" && text === "") continue;
			if (place.name === "id") return 0;
			all++;
			if (then === text) same++;
		}
		return all > 0 ? same / all : 0;
	};
}

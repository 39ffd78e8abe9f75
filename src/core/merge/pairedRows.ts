import type { Sheet } from "../sheet.ts";
import type { TextTable } from "../workbook.ts";
import { type RowKeys, rowKeys } from "./rowKeys.ts";

export const ALONE = -1;

/** Which row of one table is which of another; ALONE where it has no counterpart. */
export interface Pairs {
	readonly ofOne: Int32Array;
	readonly ofOther: Int32Array;
}

export function noPairs(one: TextTable, other: TextTable): Pairs {
	return {
		ofOne: new Int32Array(one.rows.length).fill(ALONE),
		ofOther: new Int32Array(other.rows.length).fill(ALONE),
	};
}

export function pair({ ofOne, ofOther }: Pairs, one: number, other: number): void {
	ofOne[one] = other;
	ofOther[other] = one;
}

/**
 * Pairs the rows that are still alone: by their ids, then by all their texts, then by what
 * names them in their sheet. Rows with two different ids are two lines, whatever they say;
 * but where a sheet takes one row of a name only, its name decides.
 */
export function pairedRows(
	sheet: Sheet | undefined,
	one: TextTable,
	other: TextTable,
	pairs: Pairs,
): void {
	if (!pairs.ofOne.includes(ALONE) || !pairs.ofOther.includes(ALONE)) return;
	const [of, to] = [rowKeys(sheet, one), rowKeys(sheet, other)];
	const id = (keys: RowKeys) => (row: number) => keys.id(row) || undefined;
	const content = (keys: RowKeys, hasId: boolean) => (row: number) =>
		(keys.id(row) !== "") === hasId ? keys.content(row) : undefined;
	pairBy(pairs, id(of), id(to));
	pairBy(pairs, content(of, false), content(to, false));
	pairBy(pairs, content(of, false), content(to, true));
	pairBy(pairs, content(of, true), content(to, false));
	pairBy(pairs, of.key, to.key);
}

type KeyOf = (row: number) => string | undefined;

/** Pairs rows of the same key, the first with the first. */
function pairBy(pairs: Pairs, keyOfOne: KeyOf, keyOfOther: KeyOf): void {
	const waiting = new Map<string, number[]>();
	for (let row = pairs.ofOther.length - 1; row >= 0; row--) {
		const key = pairs.ofOther[row] === ALONE ? keyOfOther(row) : undefined;
		if (key === undefined) continue;
		const same = waiting.get(key);
		if (same) same.push(row);
		else waiting.set(key, [row]);
	}
	pairs.ofOne.forEach((partner, row) => {
		const key = partner === ALONE ? keyOfOne(row) : undefined;
		const found = key === undefined ? undefined : waiting.get(key)?.pop();
		if (found !== undefined) pair(pairs, row, found);
	});
}

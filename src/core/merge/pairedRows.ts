import type { Sheet } from "../sheet.ts";
import type { TextTable } from "../workbook.ts";
import { pairMarked } from "./pairMarked.ts";
import { ALONE, type Pairs, pair } from "./pairs.ts";
import { type RowKeys, rowKeys } from "./rowKeys.ts";

/** Which rows of a table may be paired. */
export type Takes = (row: number) => boolean;
const all: Takes = () => true;

/**
 * Pairs the rows that are still alone: by their marks, then by all their texts, then by what
 * names them in their sheet. Rows with two different marks are two lines, whatever they say;
 * but where a sheet takes one row of a name only, its name decides.
 */
export function pairedRows(
	sheet: Sheet | undefined,
	one: TextTable,
	other: TextTable,
	pairs: Pairs,
	[ones, others]: readonly [Takes, Takes] = [all, all],
): void {
	const left = () => alone(pairs.ofOne, ones);
	const otherLeft = () => alone(pairs.ofOther, others);
	if (left().length === 0 || otherLeft().length === 0) return;
	const [of, to] = [rowKeys(sheet, one), rowKeys(sheet, other)];
	const by = (keyOfOne: KeyOf, keyOfOther: KeyOf) =>
		pairBy(pairs, [left(), keyOfOne], [otherLeft(), keyOfOther]);
	by(wholeMarked(of), wholeMarked(to));
	pairMarked(pairs, [one, of, left()], [other, to, otherLeft()]);
	by(content(of, false), content(to, false));
	by(content(of, false), content(to, true));
	by(content(of, true), content(to, false));
	by(of.key, to.key);
}

type KeyOf = (row: number) => string | undefined;

function wholeMarked(keys: RowKeys): KeyOf {
	return (row) => (keys.id(row) === "" ? undefined : `${keys.id(row)}\n${keys.content(row)}`);
}

function content(keys: RowKeys, hasMark: boolean): KeyOf {
	return (row) => ((keys.id(row) !== "") === hasMark ? keys.content(row) : undefined);
}

function alone(partners: Int32Array, takes: Takes): number[] {
	const rows: number[] = [];
	for (let row = 0; row < partners.length; row++)
		if (partners[row] === ALONE && takes(row)) rows.push(row);
	return rows;
}

type Rows = readonly [rows: readonly number[], keyOf: KeyOf];

/** Pairs rows of the same key, the first with the first. */
function pairBy(pairs: Pairs, [ones, keyOfOne]: Rows, [others, keyOfOther]: Rows): void {
	const waiting = new Map<string, number[]>();
	for (const row of others.toReversed()) {
		const key = keyOfOther(row);
		if (key === undefined) continue;
		const same = waiting.get(key);
		if (same) same.push(row);
		else waiting.set(key, [row]);
	}
	for (const row of ones) {
		const key = keyOfOne(row);
		const found = key === undefined ? undefined : waiting.get(key)?.pop();
		if (found !== undefined) pair(pairs, row, found);
	}
}

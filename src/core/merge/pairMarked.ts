import { Grouped } from "../grouped.ts";
import type { TextTable } from "../workbook.ts";
import { alikeness } from "./alikeness.ts";
import { pairAlike } from "./pairAlike.ts";
import { type Pairs, pair } from "./pairs.ts";
import type { RowKeys } from "./rowKeys.ts";

type Left = readonly [table: TextTable, keys: RowKeys, rows: readonly number[]];

/**
 * Pairs rows of one mark that say different things. A line that alone has its mark is that
 * line, whatever it says now; of lines that were entered in one visit, and so share a mark,
 * those are one that are most alike.
 */
export function pairMarked(pairs: Pairs, [one, of, ones]: Left, [other, to, others]: Left): void {
	const its = new Grouped<string, number>();
	for (const row of others) its.add(to.id(row), row);
	const mine = new Grouped<string, number>();
	for (const row of ones) mine.add(of.id(row), row);
	const shared = new Set(ones.map(of.id).filter((id) => id !== "" && its.of(id).length > 0));
	if (shared.size === 0) return;
	const [times, otherTimes] = [timesOf(one, of), timesOf(other, to)];
	const alike = alikeness(one, other);
	for (const id of shared) {
		const [rows, same] = [mine.of(id), its.of(id)];
		const isAlone = times.get(id) === 1 && otherTimes.get(id) === 1;
		if (isAlone) pair(pairs, rows[0] as number, same[0] as number);
		else pairAlike(pairs, rows, same, alike);
	}
}

function timesOf({ rows }: TextTable, keys: RowKeys): Map<string, number> {
	const times = new Map<string, number>();
	for (const row of rows.keys()) times.set(keys.id(row), (times.get(keys.id(row)) ?? 0) + 1);
	return times;
}

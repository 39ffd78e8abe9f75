import { checkResult } from "../../kits/checkResult.ts";
import type { ReadTables } from "../../read/readWorkbook.ts";
import type { IsoDate } from "../../values/date.ts";
import { piecesByKind } from "../kits/piecesOfKinds.ts";

/** Something that failed, and how often. */
export interface Failed {
	readonly name: string;
	readonly times: number;
}

/** Checks that failed on some days: by what was found wrong, and by kit; the most frequent first. */
export function failuresOverDays(
	{ checks, kits, kinds }: ReadTables,
	days: readonly IsoDate[],
): { readonly byFinding: readonly Failed[]; readonly byKit: readonly Failed[] } {
	const all = new Set(days);
	const listed = piecesByKind(kinds);
	const piecesOf = new Map(kits.rows.map(({ value }) => [value.kit, listed.get(value.kind) ?? 0]));
	const failed = checks.rows.flatMap(({ value }) => {
		const checked = checkResult(value, piecesOf.get(value.kit) ?? 0);
		if (!all.has(value.checked_at.date) || !checked || checked.found === "passed") return [];
		return [{ kit: value.kit, reason: checked.reason }];
	});
	return {
		byFinding: timesOf(failed.map(({ reason }) => reason)),
		byKit: timesOf(failed.map(({ kit }) => kit)),
	};
}

function timesOf(names: readonly string[]): Failed[] {
	const times = new Map<string, number>();
	for (const name of names) times.set(name, (times.get(name) ?? 0) + 1);
	return [...times]
		.map(([name, count]) => ({ name, times: count }))
		.sort((a, b) => b.times - a.times);
}

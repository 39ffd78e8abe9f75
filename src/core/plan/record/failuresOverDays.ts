import { checkResult } from "../../kits/checkResult.ts";
import type { ReadTables } from "../../read/readWorkbook.ts";
import type { IsoDate } from "../../values/date.ts";
import { piecesToCheck } from "../kits/piecesOfKinds.ts";

/** Something that failed, and how often. */
export interface Failed {
	readonly name: string;
	readonly times: number;
}

/** Checks of some days, finished or failed before. */
export interface FailuresOverDays {
	readonly checks: number;
	/** What was found wrong, and with which kit, check by check. */
	readonly failed: readonly { readonly kit: string; readonly finding: string }[];
	/** The most frequent first. */
	readonly byFinding: readonly Failed[];
	readonly byKit: readonly Failed[];
}

/** Checks that failed on some days: by what was found wrong, and by kit. */
export function failuresOverDays(
	{ checks, kits, kinds }: ReadTables,
	days: readonly IsoDate[],
): FailuresOverDays {
	const all = new Set(days);
	const listed = piecesToCheck(kinds);
	const kindOf = new Map(kits.rows.map(({ value }) => [value.kit, value.kind]));
	const judged = checks.rows.flatMap(({ value }) => {
		const checked = checkResult(value, listed(kindOf.get(value.kit) ?? ""));
		return all.has(value.checked_at.date) && checked ? [{ kit: value.kit, ...checked }] : [];
	});
	const failed = judged
		.filter(({ found }) => found !== "passed")
		.map(({ kit, reason }) => ({ kit, finding: reason }));
	return {
		checks: judged.length,
		failed,
		byFinding: timesOf(failed.map(({ finding }) => finding)),
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

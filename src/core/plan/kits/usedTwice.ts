import { advice, type Problem } from "../../problem.ts";
import type { GoodRow } from "../../read/goodRow.ts";
import type { ReadTables } from "../../read/readWorkbook.ts";
import { say } from "../../say.ts";
import { type UsesRow, usesSheet } from "../../sheets/uses.ts";
import { writeClock } from "../../values/clock.ts";

/** A kit that is written down as used or opened twice at one minute, as by two people from one log: it counts as two kits used. */
export function usedTwice({ uses }: Pick<ReadTables, "uses">): Problem[] {
	const first = new Map<string, GoodRow<UsesRow>>();
	return uses.rows.flatMap((row) => {
		const { at, kit, what } = row.value;
		if (what === "none_ready" || kit === "" || at.isDayOnly) return [];
		const key = JSON.stringify([at.date, at.minutes, kit]);
		const before = first.get(key);
		if (!before) {
			first.set(key, row);
			return [];
		}
		return [
			advice(
				{ file: usesSheet.file, line: row.line, column: "at" },
				{
					code: "use-written-twice",
					received: say`lines ${before.line} and ${row.line}`,
					allowed: say`each use written down once`,
					message: say`Kit ${kit} is written down twice for ${at.date}, ${writeClock(at.minutes)}, in lines ${before.line} and ${row.line}: it counts as two kits used. If it was used once, take one of them out.`,
				},
			),
		];
	});
}

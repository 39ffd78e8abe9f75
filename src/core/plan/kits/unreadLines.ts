import { Grouped } from "../../grouped.ts";
import type { Problem } from "../../problem.ts";
import type { BadRow } from "../../read/goodRow.ts";
import type { ReadTables } from "../../read/readWorkbook.ts";
import type { IsoDate } from "../../values/date.ts";

interface UnreadLine {
	/** undefined where the day itself cannot be read. */
	readonly day: IsoDate | undefined;
	readonly problems: readonly Problem[];
}

/**
 * Why nobody knows whether a kit that stands as ready still is: lines that name it among the
 * uses and checks, not before the day since which it is ready, and that cannot be read. They
 * may say that it was used, or that a test failed.
 *
 * Rounds are left out: one that cannot be read makes no kit ready.
 */
export function unreadLines({
	uses,
	checks,
}: Pick<ReadTables, "uses" | "checks">): (kit: string, since: IsoDate) => readonly Problem[] {
	const lines = new Grouped<string, UnreadLine>();
	const add = ({ value: { kit }, problems }: BadRow<{ readonly kit: string }>, day?: IsoDate) => {
		if (kit) lines.add(kit, { day, problems });
	};
	for (const row of uses.badRows) add(row, row.value.at?.date);
	for (const row of checks.badRows) add(row, row.value.checked_at?.date);
	return (kit, since) =>
		lines
			.of(kit)
			.filter(({ day }) => day === undefined || day >= since)
			.flatMap(({ problems }) => problems);
}

import { advice, type Problem } from "../../problem.ts";
import type { GoodRow } from "../../read/goodRow.ts";
import type { ReadWorkbook } from "../../read/readWorkbook.ts";
import { say } from "../../say.ts";
import { type JournalRow, journalSheet } from "../../sheets/journal.ts";

/**
 * Receipts of the journal that two people, or one person at two times, wrote down alike: brought
 * together, two copies keep both, and the stock would have twice what came.
 */
export function receivedTwice({ tables }: ReadWorkbook): Problem[] {
	const first = new Map<string, GoodRow<JournalRow>>();
	return tables.journal.rows.flatMap((row) => {
		const { day, item, lot, entry, quantity, id } = row.value;
		if (entry !== "receipt" || id === "") return [];
		const key = JSON.stringify([day, item, lot, quantity]);
		const before = first.get(key);
		if (!before) first.set(key, row);
		// The lines of one visit share a mark: two boxes of one lot are theirs.
		if (!before || before.value.id === id) return [];
		return [
			advice(
				{ file: journalSheet.file, line: row.line, column: "entry" },
				{
					code: "receipt-written-twice",
					received: say`lines ${before.line} and ${row.line}`,
					allowed: say`each delivery written down once`,
					message: say`${quantity} of ${item}, lot ${lot}, is received twice on ${day}, in lines ${before.line} and ${row.line}, written down at two times or in two copies. If it came once, take one of them out.`,
				},
			),
		];
	});
}

import type { Columns } from "../column.ts";
import { problem } from "../problem.ts";
import { say } from "../say.ts";
import type { RowOf, Sheet } from "../sheet.ts";
import type { ReadTable } from "./readTable.ts";

interface Named {
	readonly value: Record<string, unknown>;
}

/** A row that says the same thing as an earlier one again is refused, and so is the earlier one. */
export function refuseDoubles<C extends Columns>(
	sheet: Sheet<C>,
	read: ReadTable<RowOf<Sheet<C>>>,
): ReadTable<RowOf<Sheet<C>>> {
	const { unique } = sheet;
	if (!unique) return read;
	const lines = new Map<string, number[]>();
	const keyOf = (row: Named) => JSON.stringify(unique.map((key) => row.value[key]));
	const nameOf = (row: Named) => unique.map((key) => String(row.value[key])).join(", ");
	for (const row of read.rows) lines.set(keyOf(row), [...(lines.get(keyOf(row)) ?? []), row.line]);
	const isDouble = (row: Named) => (lines.get(keyOf(row))?.length ?? 0) > 1;
	const doubled = read.rows.filter(isDouble);
	if (doubled.length === 0) return read;
	return {
		...read,
		rows: read.rows.filter((row) => !isDouble(row)),
		badRows: [
			...read.badRows,
			...doubled.map((row) => ({
				...row,
				problems: [
					problem(
						{ file: read.file, line: row.line, column: unique[0] ?? "" },
						{
							code: "doubled-row",
							received: nameOf(row),
							allowed: say`one row for each ${unique.join(" and ")}`,
							message: say`${nameOf(row)} stands in lines ${lines.get(keyOf(row))?.join(" and ")} of ${read.file}; keep one of them.`,
						},
					),
				],
			})),
		],
	};
}

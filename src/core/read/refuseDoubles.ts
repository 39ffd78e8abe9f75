import type { Columns } from "../column.ts";
import { problem } from "../problem.ts";
import { say } from "../say.ts";
import type { RowOf, Sheet } from "../sheet.ts";
import type { ReadTable } from "./goodRow.ts";

const MOST_LINES_NAMED = 10;

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
	const nameOf = (row: Named) =>
		unique
			.map((key) => (sheet.columns[key] as Columns[string]).value.write(row.value[key]))
			.join(", ");
	for (const row of read.rows) {
		const same = lines.get(keyOf(row));
		if (same) same.push(row.line);
		else lines.set(keyOf(row), [row.line]);
	}
	const linesOf = (row: Named) => lines.get(keyOf(row)) as number[];
	const isDouble = (row: Named) => linesOf(row).length > 1;
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
						{ file: read.file, line: row.line, column: unique[0] as string },
						{
							code: "doubled-row",
							received: nameOf(row),
							allowed: say`one row for each ${together(unique)}`,
							message: standsTwice(nameOf(row), linesOf(row), read.file),
						},
					),
				],
			})),
		],
	};
}

/** Where the doubled rows are; of very many only the first, or the messages outgrow the file. */
function standsTwice(name: string, lines: readonly number[], file: string): string {
	return lines.length > MOST_LINES_NAMED
		? say`${name} stands in ${lines.length} lines of ${file}, the first of them ${together(lines.slice(0, 2))}; keep one of them.`
		: say`${name} stands in lines ${together(lines)} of ${file}; keep one of them.`;
}

/** "date and item": two names, seldom more. */
function together(names: readonly (string | number)[]): string {
	return names.map(String).reduce((all, next) => say`${all} and ${next}`);
}

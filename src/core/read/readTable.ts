import type { Columns } from "../column.ts";
import { advice, type Place, type Problem, problem } from "../problem.ts";
import { headerOf, type RowOf, type Sheet } from "../sheet.ts";
import { lineOf, type TextTable } from "../workbook.ts";

/** A row all of whose cells could be understood. */
export interface GoodRow<R> {
	readonly line: number;
	readonly value: R;
}

/** A row with at least one cell that could not: what was understood, and the problems. */
export interface BadRow<R> {
	readonly line: number;
	readonly value: Partial<R>;
	readonly problems: readonly Problem[];
}

export interface ReadTable<R> {
	readonly file: string;
	readonly rows: readonly GoodRow<R>[];
	readonly badRows: readonly BadRow<R>[];
	/** Problems of the whole table: header, doubled rows. Those of cells are in badRows. */
	readonly problems: readonly Problem[];
	/** True where the file itself was absent. */
	readonly absent: boolean;
}

/**
 * Reads the text of a sheet into typed rows.
 *
 * A row without any text is skipped. A bad cell makes its row a bad row; the
 * other rows stand. Unknown columns are named and otherwise left alone.
 */
export function readTable<C extends Columns>(
	sheet: Sheet<C>,
	table: TextTable | undefined,
): ReadTable<RowOf<Sheet<C>>> {
	type R = RowOf<Sheet<C>>;
	const { file } = sheet;
	if (!table)
		return {
			file,
			rows: [],
			badRows: [],
			problems: sheet.optional ? [] : [missingFile(file)],
			absent: true,
		};
	const names = table.header.map((key) => key.trim());
	const problems = headerProblems(sheet, { ...table, header: names });
	const rows: GoodRow<R>[] = [];
	const badRows: BadRow<R>[] = [];
	const columns = Object.entries(sheet.columns).map(([key, column]) => ({
		key,
		column,
		at: names.indexOf(key),
	}));
	table.rows.forEach((cells, index) => {
		if (cells.every((cell) => cell.trim() === "")) return;
		const line = lineOf(table, index);
		const value: Record<string, unknown> = {};
		const wrong: Problem[] = [];
		for (const { key, column, at } of columns) {
			const text = at < 0 ? "" : (cells[at] ?? "");
			if (text.trim() === "" && column.fallback !== undefined) {
				value[key] = column.fallback;
				continue;
			}
			const read = column.value.schema.safeParse(text);
			if (read.success) value[key] = read.data;
			else
				wrong.push(badCell({ file, line, column: key }, column.label, text, column.value.allowed));
		}
		if (
			cells.length > table.header.length &&
			cells.slice(table.header.length).some((c) => c !== "")
		)
			problems.push(tooManyCells({ file, line, column: "" }, cells, table.header.length));
		if (wrong.length === 0) rows.push({ line, value: value as R });
		else badRows.push({ line, value: value as Partial<R>, problems: wrong });
	});
	return refuseDoubles(sheet, { file, rows, badRows, problems, absent: false });
}

interface Named {
	readonly value: Record<string, unknown>;
}

/** A row that says the same thing as an earlier one again is refused, and so is the earlier one. */
function refuseDoubles<C extends Columns>(
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
							allowed: `one row for each ${unique.join(" and ")}`,
							message: `${nameOf(row)} stands in lines ${lines.get(keyOf(row))?.join(" and ")} of ${read.file}; keep one of them.`,
						},
					),
				],
			})),
		],
	};
}

function headerProblems(sheet: Sheet, table: TextTable): Problem[] {
	const { file } = sheet;
	const header = headerOf(sheet);
	const found: Problem[] = [];
	if (table.header.length === 0)
		return [
			problem(
				{ file, line: 1, column: "" },
				{
					code: "empty-file",
					received: "",
					allowed: `a first line with the columns ${header.join(", ")}`,
					message: `${file} is empty; its first line should name the columns ${header.join(", ")}.`,
				},
			),
		];
	for (const key of header)
		if (!table.header.includes(key) && !sheet.columns[key]?.added)
			found.push(
				problem(
					{ file, line: 1, column: key },
					{
						code: "missing-column",
						received: table.header.join(", "),
						allowed: `the column ${key}`,
						message: `${file} has no column ${key}; its first line should name it.`,
					},
				),
			);
	table.header.forEach((key, index) => {
		const twice = table.header.indexOf(key) !== index;
		if (header.includes(key) && !twice) return;
		found.push(
			advice(
				{ file, line: 1, column: key },
				{
					code: twice ? "doubled-column" : "unknown-column",
					received: key,
					allowed: header.join(", "),
					message: twice
						? `${file} has the column ${key} twice; only the first is used, the other is kept.`
						: `${file} has a column "${shown(key)}" that is not part of this sheet; it is kept and not used.`,
				},
			),
		);
	});
	return found;
}

function missingFile(file: string): Problem {
	return problem(
		{ file, line: null, column: "" },
		{
			code: "missing-file",
			received: "",
			allowed: `a file ${file}`,
			message: `The workbook has no file ${file}.`,
		},
	);
}

function tooManyCells(place: Place, cells: readonly string[], width: number): Problem {
	return advice(place, {
		code: "too-many-cells",
		received: shown(cells.slice(width).join(", ")),
		allowed: `${width} cells`,
		message: `Line ${place.line} of ${place.file} has ${cells.length} cells where the first line names ${width}; the rest is not used.`,
	});
}

/** A cell that could not be understood. */
export function badCell(place: Place, label: string, text: string, allowed: string): Problem {
	const found = text.trim() === "" ? "it is blank" : `"${shown(text)}" was found`;
	return problem(place, {
		code: "bad-cell",
		received: text,
		allowed,
		message: `${label}: ${found}; allowed is ${allowed}.`,
	});
}

/** The longest piece of someone's text that a message repeats. */
const LONGEST_QUOTE = 60;

function shown(text: string): string {
	return text.length > LONGEST_QUOTE ? `${text.slice(0, LONGEST_QUOTE)}…` : text;
}

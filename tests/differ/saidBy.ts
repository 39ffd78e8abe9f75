import { createHash } from "node:crypto";
import { plan } from "../../src/core/plan/plan.ts";
import type { TextTable, Workbook } from "../../src/core/workbook.ts";
import { computedCsv } from "../../src/io/computedCsv.ts";
import { readFiles } from "../../src/io/readFiles.ts";
import { zipWorkbook } from "../../src/io/zipWorkbook.ts";
import { randomNumbers } from "../reference/randomNumbers.ts";
import { anyWorkbook } from "./anyWorkbook.ts";

/** As invented; written to a zip and read; read, with its rows in another order. */
export const ways = ["made", "read", "mixed"] as const;
export type Way = (typeof ways)[number];

/** Done, asked or written one after the other: their order says something. */
const IN_ORDER = ["steps.csv", "water-sources.csv", "journal.csv"];

/** Where a row stands, by which texts name it. */
const LINE = /line \d+/g;

/**
 * What the plan of an invented workbook says, file by file: each line of it as it is written,
 * in an order of their own, and what is wrong without the line where it is.
 */
export function saidBy(number: number, way: Way): Record<string, string[]> {
	const { tables, problems } = plan(workbookOf(number, way));
	const said = Object.values(tables).map((table) => [
		table.sheet.file,
		computedCsv(table).replace(LINE, "line").split("\r\n").sort(),
	]);
	const words = problems.map(({ file, column, code }) => `${file} ${column} ${code}`);
	return { ...Object.fromEntries(said), problems: [...new Set(words)].sort() };
}

/** The same, as short as can be. */
export function digestOf(number: number, way: Way): string {
	return createHash("sha256")
		.update(JSON.stringify(saidBy(number, way)))
		.digest("hex");
}

function workbookOf(number: number, way: Way): Workbook {
	const made = anyWorkbook(number);
	if (way === "made") return made;
	const { workbook, problems } = readFiles([{ name: "any.zip", bytes: zipWorkbook(made) }]);
	const [problem] = problems;
	if (problem) throw new Error(`${number}: what was written is not read: ${problem.message}`);
	return way === "read" ? workbook : mixedUp(workbook, randomNumbers(number));
}

function mixedUp(workbook: Workbook, random: () => number): Workbook {
	const tables = Object.entries(workbook.tables).map(([file, table]): [string, TextTable] => {
		if (IN_ORDER.includes(file)) return [file, table];
		const rows = table.rows
			.map((row) => ({ row, place: random() }))
			.sort((a, b) => a.place - b.place)
			.map(({ row }) => row);
		return [file, { ...table, rows }];
	});
	return { ...workbook, tables: Object.fromEntries(tables) };
}

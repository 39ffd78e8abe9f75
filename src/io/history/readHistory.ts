import { advice, type Problem } from "../../core/problem.ts";
import { say } from "../../core/say.ts";
import { MOST_ROWS } from "../csvProblems.ts";
import { decode } from "../decode.ts";
import { MOST_BYTES } from "../zipRefusals.ts";
import { historyDigest } from "./historyDigest.ts";
import { HISTORY_EDITION, HISTORY_FILE, type History, type SheetHistory } from "./historyFile.ts";

/** Most saves of one workbook: ten a day for more than a century. */
const MOST_SAVES = 500_000;

type ReadHistory =
	| { readonly history: History; readonly problems: readonly [] }
	| { readonly history?: never; readonly problems: readonly Problem[] };

/**
 * Reads what a workbook remembers of where it comes from. A file that is damaged, or of
 * another edition, keeps nothing from being opened: it is advice, and the workbook counts
 * as one that remembers nothing.
 */
export function readHistory(bytes: Uint8Array): ReadHistory {
	if (bytes.length > MOST_BYTES) return { problems: [unusable(say`it is too large`)] };
	const decoded = decode(HISTORY_FILE, bytes, "utf-8");
	if (!decoded.ok) return { problems: [unusable(say`it is no text`)] };
	try {
		const kept: unknown = JSON.parse(decoded.text);
		if (isObject(kept) && Number(kept.basinbook_history) > HISTORY_EDITION)
			return { problems: [unusable(say`a newer Basinbook wrote it`)] };
		if (isHistory(kept) && [historyDigest(kept), undefined].includes(kept.digest))
			return { history: kept, problems: [] };
	} catch {
		// Not JSON: damaged, as below.
	}
	return { problems: [unusable(say`it is damaged`)] };
}

function unusable(why: string): Problem {
	return advice(
		{ file: HISTORY_FILE, line: null, column: "" },
		{
			code: "strange-history",
			received: why,
			allowed: say`what a workbook remembers of its saves`,
			message: say`${HISTORY_FILE} is not used: ${why}. Nothing in the sheets is touched by that. Brought together with another copy, what differs is asked line by line, because nobody can tell any more who changed it.`,
		},
	);
}

function isHistory(kept: unknown): kept is History {
	if (!isObject(kept) || kept.basinbook_history !== HISTORY_EDITION) return false;
	const { saves, sheets } = kept;
	if (!isListOf(saves, isSave) || saves.length > MOST_SAVES || !isObject(sheets)) return false;
	if (new Set(saves.map(([id]) => id)).size !== saves.length) return false;
	return Object.values(sheets).every((sheet) => isSheet(sheet, saves.length));
}

function isSave(save: unknown): save is readonly [string, string, string] {
	return isListOf(save, isText) && save.length === 3 && !/[.\s]|^$/.test(save[0] as string);
}

function isSheet(sheet: unknown, saves: number): sheet is SheetHistory {
	if (!isObject(sheet) || !isText(sheet.digest)) return false;
	const isPlace = (save: unknown) => isCount(save) && save < saves;
	const { rows, changed, gone } = sheet;
	return (
		isListOf(rows, (run): run is SheetHistory["rows"][number] => {
			const [save, first, count] = listOf(run, 3);
			return isPlace(save) && isCount(first) && isCount(count);
		}) &&
		isListOf(changed, (cells): cells is SheetHistory["changed"][number] => {
			const [row, count, column, save] = listOf(cells, 4);
			return isCount(row) && isCount(count) && isText(column) && isPlace(save);
		}) &&
		isListOf(gone, (run): run is SheetHistory["gone"][number] => {
			const [save, first, count, goneIn] = listOf(run, 4);
			return isPlace(save) && isCount(first) && isCount(count) && isPlace(goneIn);
		}) &&
		inAll(rows, 2) <= MOST_ROWS &&
		inAll(changed, 1) <= MOST_ROWS * 20 &&
		inAll(gone, 2) <= MOST_ROWS
	);
}

/** How many rows the runs of a list stand for: a damaged number must not ask for more than there can be. */
function inAll(runs: readonly (readonly unknown[])[], at: number): number {
	return runs.reduce((sum, run) => sum + Number(run[at]), 0);
}

function listOf(value: unknown, length: number): readonly unknown[] {
	return Array.isArray(value) && value.length === length ? value : [];
}

function isListOf<T>(value: unknown, is: (one: unknown) => one is T): value is readonly T[] {
	return Array.isArray(value) && value.every(is);
}

function isObject(value: unknown): value is Readonly<Record<string, unknown>> {
	return typeof value === "object" && value !== null && !Array.isArray(value);
}

function isText(value: unknown): value is string {
	return typeof value === "string";
}

function isCount(value: unknown): value is number {
	return Number.isSafeInteger(value) && Number(value) >= 0 && Number(value) < 1e9;
}

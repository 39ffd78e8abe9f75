import { settings } from "../core/sheets/settings.ts";
import { typedSheets } from "../core/sheets/typedSheets.ts";
import { unitSheet } from "../core/sheets/unit.ts";
import { type TextTable, type Workbook, withTable } from "../core/workbook.ts";
import { withChecksOfBefore } from "./withChecksOfBefore.ts";

/** Edition of the file format that this program writes; it goes up when an older program would misread a file. */
export const FORMAT = 3;

type Step = (workbook: Workbook) => Workbook;

/** What brings the texts of an edition to the next one. */
const steps: Readonly<Record<number, Step>> = {
	1: withWhatCameSince,
	2: (workbook) => withChecksOfBefore(withWhatHeld(withWhatCameSince(workbook))),
};

/** Settings that came with another usual value than what held before: an older workbook keeps its meaning. */
const HELD: Readonly<Record<string, string>> = {
	renew_kits: "when_expired",
	dose_for_wet_kits: "no",
	boil_for: "after_use",
};

/**
 * The workbook with its texts in the present edition of the format, edition by edition.
 *
 * One of a newer edition stays as it is, number and all: saved again it is still
 * what the newer program wrote, so that program loses nothing.
 *
 * @param known the steps there are; given by tests alone
 */
export function migrated(workbook: Workbook, known = steps, present = FORMAT): Workbook {
	const { format = present, tables } = workbook;
	if (format > present) return workbook;
	let next: Workbook = { tables };
	for (let from = Math.max(1, format); from < present; from++) next = known[from]?.(next) ?? next;
	return next;
}

/** Columns and settings of later editions, blank: there to be filled in also where the file is edited elsewhere. */
function withWhatCameSince(workbook: Workbook): Workbook {
	const withColumns = typedSheets.reduce((before, { file, columns }) => {
		const table = before.tables[file];
		const added = Object.keys(columns).filter((key) => columns[key]?.added);
		return table ? withTable(before, file, withColumnsAdded(table, added)) : before;
	}, workbook);
	const unit = withColumns.tables[unitSheet.file];
	return unit ? withTable(withColumns, unitSheet.file, withSettingsAdded(unit)) : withColumns;
}

/** A row longer than its header is left as it is: a new column would take the stray cell for its own. */
function withColumnsAdded(table: TextTable, added: readonly string[]): TextTable {
	const { header, rows } = table;
	const names = header.map((key) => key.trim());
	const absent = added.filter((key) => !names.includes(key));
	const fits = header.length > 0 && rows.every((cells) => cells.length <= header.length);
	return fits && absent.length > 0 ? { ...table, header: [...header, ...absent] } : table;
}

function withSettingsAdded(table: TextTable): TextTable {
	const at = table.header.findIndex((key) => key.trim() === "key");
	if (at < 0) return table;
	const there = new Set(table.rows.map((cells) => cells[at]?.trim()));
	const absent = Object.entries(settings).flatMap(
		([key, { added }]: [string, { added?: boolean }]) => (added && !there.has(key) ? [key] : []),
	);
	const blank = (key: string) => table.header.map((_, place) => (place === at ? key : ""));
	const lines = table.lines;
	const last = lines?.at(-1) ?? 1;
	return {
		...table,
		rows: [...table.rows, ...absent.map(blank)],
		...(lines && { lines: [...lines, ...absent.map((_, after) => last + 1 + after)] }),
	};
}

/** What held before, written where the setting is blank. */
function withWhatHeld(workbook: Workbook): Workbook {
	const table = workbook.tables[unitSheet.file];
	if (!table) return workbook;
	const names = table.header.map((name) => name.trim());
	const [key, value] = [names.indexOf("key"), names.indexOf("value")];
	if (key < 0 || value < 0) return workbook;
	const rows = table.rows.map((cells) => {
		const held = HELD[cells[key]?.trim() ?? ""];
		return held && !cells[value]?.trim()
			? table.header.map((_, at) => (at === value ? held : (cells[at] ?? "")))
			: cells;
	});
	return withTable(workbook, unitSheet.file, { ...table, rows });
}

import type { TextTable, Workbook } from "../workbook.ts";

interface Tables {
	readonly tables: Workbook["tables"];
	/** Files whose table is not one any more. */
	readonly damaged: readonly string[];
}

/** The tables of a workbook that comes out of a browser's storage, whatever may have happened to it there. */
export function tablesIn(kept: unknown): Tables {
	const found = Object.entries((kept as Partial<Workbook> | null | undefined)?.tables ?? {});
	return {
		tables: Object.fromEntries(
			found.flatMap(([file, table]) => (isTable(table) ? [[file, withSoundLines(table)]] : [])),
		),
		damaged: found.flatMap(([file, table]) => (isTable(table) ? [] : [file])),
	};
}

function isTable(table: unknown): table is TextTable {
	const { header, rows } = (table ?? {}) as { header?: unknown; rows?: unknown };
	return isTexts(header) && Array.isArray(rows) && rows.every(isTexts);
}

/** Line numbers that are none are left out: they can be counted anew. */
function withSoundLines({ header, rows, lines }: TextTable): TextTable {
	const isSound = Array.isArray(lines) && lines.every((line) => Number.isInteger(line) && line > 0);
	return isSound ? { header, rows, lines } : { header, rows };
}

function isTexts(cells: unknown): boolean {
	return Array.isArray(cells) && cells.every((cell) => typeof cell === "string");
}

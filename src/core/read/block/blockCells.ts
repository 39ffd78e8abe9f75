import type { Column } from "../../column.ts";
import type { Sheet } from "../../sheet.ts";
import { keptSettingsSheet } from "../../sheets/keptSettings.ts";
import { settings } from "../../sheets/settings.ts";
import { unitSheet } from "../../sheets/unit.ts";
import { lineOf } from "../../workbook.ts";
import type { BlockCell, BlockTable } from "./blockTable.ts";

/** Every cell of a sheet that is not blank and belongs to one of its columns; the value of a setting goes by the setting. */
export function blockCells({ sheet, table, isNumber }: BlockTable): BlockCell[] {
	const keys = table.header.map((key) => key.trim());
	const keyAt = isOfSettings(sheet) ? keys.indexOf("key") : -1;
	return table.rows.flatMap((cells, row) =>
		cells.flatMap((text, at) => {
			const key = keys[at] ?? "";
			const column = (key === "value" && settingOf(cells[keyAt])) || columnOf(sheet, key);
			if (!column || text.trim() === "") return [];
			const place = { file: sheet.file, line: lineOf(table, row), column: key };
			const cell = { row, at, text, column, place };
			return [isNumber?.(row, at) ? { ...cell, isNumber: true } : cell];
		}),
	);
}

function isOfSettings({ file }: Sheet): boolean {
	return file === unitSheet.file || file === keptSettingsSheet.file;
}

function settingOf(key: string | undefined): Column<unknown> | undefined {
	const name = key?.trim() ?? "";
	return Object.hasOwn(settings, name)
		? (settings as Record<string, Column<unknown>>)[name]
		: undefined;
}

function columnOf({ columns }: Sheet, key: string): Column<unknown> | undefined {
	return Object.hasOwn(columns, key) ? columns[key] : undefined;
}

import type { Column } from "../../column.ts";
import { textsOf } from "../../read/textsOf.ts";
import { type SettingKey, settings } from "../../sheets/settings.ts";
import { unitSheet } from "../../sheets/unit.ts";
import { wrongFor } from "../notAllowed.ts";
import { withTexts } from "../withTexts.ts";
import type { BeginEntry } from "./beginEntry.ts";

/** A setting of the unit as an entry; its words are those of the setting. */
export function settingEntry(key: SettingKey): BeginEntry {
	const column = settings[key] as Column<unknown>;
	const { label, unit, help, value, fallback } = column;
	return {
		key,
		label,
		help,
		...(fallback === undefined ? {} : { defaultOf: column }),
		unit: () => unit,
		allowed: () => value.allowed,
		read(workbook) {
			const texts = textsOf(workbook, unitSheet);
			const row = texts.rows.find((cells) => texts.cell(cells, "key").trim() === key);
			return row ? texts.cell(row, "value").trim() : "";
		},
		write(workbook, text) {
			const isLeftBlank = text.trim() === "" && fallback !== undefined;
			const wrong = isLeftBlank ? undefined : wrongFor(column, text);
			if (wrong !== undefined) return wrong;
			const texts = textsOf(workbook, unitSheet);
			const found = texts.rows.findIndex((cells) => texts.cell(cells, "key").trim() === key);
			const row = found < 0 ? texts.rows.length : found;
			return withTexts(workbook, unitSheet.file, [
				{ row, column: "key", text: key },
				{ row, column: "value", text: text.trim() },
			]);
		},
	};
}

import type { Column } from "../../../core/column.ts";
import { withTexts } from "../../../core/edit/withTexts.ts";
import { textsOf } from "../../../core/read/textsOf.ts";
import { say } from "../../../core/say.ts";
import { type SettingKey, settings } from "../../../core/sheets/settings.ts";
import { unitSheet } from "../../../core/sheets/unit.ts";
import { shownDefault } from "../../format/shownDefault.ts";
import { type BeginEntry, wrongFor } from "./beginEntry.ts";

/** A setting of the unit as an entry; its words are those of the setting. */
export function settingEntry(key: SettingKey, control: "text" | "date" = "text"): BeginEntry {
	const column = settings[key] as Column<unknown>;
	const { label, unit, help, value, fallback } = column;
	return {
		key,
		label,
		help,
		control,
		...(fallback === undefined ? {} : { blank: shownDefault(column) }),
		unit: () => unit,
		allowed: () =>
			control === "date" ? say`a day of the calendar, typed or picked` : value.allowed,
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

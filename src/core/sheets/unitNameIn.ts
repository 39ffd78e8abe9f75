import type { Workbook } from "../workbook.ts";
import { unitSheet } from "./unit.ts";

/** The unit's name as it was typed; "" where it has none: what stands in for one on paper names no unit. */
export function unitNameIn({ tables }: Workbook): string {
	const { header, rows } = tables[unitSheet.file] ?? { header: [], rows: [] };
	const names = header.map((name) => name.trim());
	const [key, value] = [names.indexOf("key"), names.indexOf("value")];
	const row = rows.find((cells) => cells[key]?.trim() === "unit_name");
	return row?.[value]?.trim() ?? "";
}

import { unitSheet } from "../../core/sheets/unit.ts";
import type { Workbook } from "../../core/workbook.ts";

/** The unit's name as it was typed; "" where it has none. */
export function unitNameIn({ tables }: Workbook): string {
	return tables[unitSheet.file]?.rows.find(([key]) => key === "unit_name")?.[1] ?? "";
}

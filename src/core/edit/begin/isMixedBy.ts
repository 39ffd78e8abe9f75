import { valueIn } from "../../outcome.ts";
import { readSettings } from "../../read/readSettings.ts";
import { readTable } from "../../read/readTable.ts";
import { treatmentsSheet } from "../../sheets/treatments.ts";
import { unitSheet } from "../../sheets/unit.ts";
import type { Workbook } from "../../workbook.ts";

/** Whether the unit uses chlorine for kits at all, so that its product is worth asking for. */
export function isMixedBy({ tables }: Workbook): boolean {
	const { settings } = readSettings(tables[unitSheet.file]);
	const method = valueIn(settings.method) ?? "chlorine";
	const treatments = readTable(treatmentsSheet, tables[treatmentsSheet.file]);
	return (
		method === "chlorine" ||
		(valueIn(settings.wipe_solution_litres) ?? 0) > 0 ||
		treatments.rows.some(({ value }) => value.method === "chlorine")
	);
}

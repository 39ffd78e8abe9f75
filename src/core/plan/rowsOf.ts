import type { AnyTable, ComputedRow, ComputedTable } from "../computedTable.ts";
import type { Sheet } from "../sheet.ts";
import type { Plan } from "./plan.ts";

/** The rows of a sheet that the plan fills in, typed by its columns; none where there is no such table. */
export function rowsOf<S extends Sheet>(plan: Plan, sheet: S): readonly ComputedRow<S>[] {
	const table = plan.tables[sheet.file];
	return table && isOf(table, sheet) ? table.rows : [];
}

function isOf<S extends Sheet>(table: AnyTable, sheet: S): table is ComputedTable<S> & AnyTable {
	return table.sheet === sheet;
}

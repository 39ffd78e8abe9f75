import { withoutBlankEnds } from "../../core/withoutBlankEnds.ts";
import type { Workbook } from "../../core/workbook.ts";
import { standardTable } from "../standardTable.ts";

/** The workbook as it is once saved and opened again, so that two copies differ by what they say and not by how it was typed. */
export function clearForm(workbook: Workbook): Workbook {
	const tables = Object.entries(workbook.tables).map(([file, table]) => [
		file,
		withoutBlankEnds(standardTable(file, table)),
	]);
	return { ...workbook, tables: Object.fromEntries(tables) };
}

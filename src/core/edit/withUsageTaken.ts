import { textsOf } from "../read/textsOf.ts";
import { usageSheet } from "../sheets/usage.ts";
import { lineOf, type Workbook } from "../workbook.ts";
import { withRow } from "./withRow.ts";
import { tableOf } from "./withTexts.ts";

/** The workbook with another quantity in one line of usage.csv, and where it is from added to its note. */
export function withUsageTaken(
	workbook: Workbook,
	line: number,
	quantity: number,
	from: string,
): Workbook {
	const table = tableOf(workbook, usageSheet.file);
	const row = table.rows.findIndex((_, at) => lineOf(table, at) === line);
	const cells = table.rows[row];
	if (!cells) return workbook;
	const before = textsOf(workbook, usageSheet).cell(cells, "note").trim();
	const note = before === "" ? from : `${before}; ${from}`;
	const text = usageSheet.columns.quantity.value.write(quantity);
	return withRow(workbook, usageSheet.file, { quantity: text, note }, row);
}

import type { GoodRow } from "../../read/goodRow.ts";
import { readTable } from "../../read/readTable.ts";
import { type PlacedRow, placedSheet } from "../../sheets/placed.ts";
import { lineOf, type Workbook } from "../../workbook.ts";
import { withRow } from "../withRow.ts";
import { tableOf } from "../withTexts.ts";

/** The order in a line of the file, where it is still on its way. */
export function orderOnTheWay(workbook: Workbook, line: number): GoodRow<PlacedRow> | undefined {
	return readTable(placedSheet, workbook.tables[placedSheet.file]).rows.find(
		(row) => row.line === line && row.value.received_on === null && row.value.packs > 0,
	);
}

/** The workbook with some cells of an order's line replaced. @param line of an order that is there */
export function withOrder(
	workbook: Workbook,
	line: number,
	cells: Partial<Record<keyof PlacedRow & string, string>>,
): Workbook {
	const table = tableOf(workbook, placedSheet.file);
	const row = table.rows.findIndex((_, at) => lineOf(table, at) === line);
	return withRow(workbook, placedSheet.file, cells, row);
}

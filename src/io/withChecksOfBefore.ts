import { textsOf } from "../core/read/textsOf.ts";
import { checksSheet } from "../core/sheets/checks.ts";
import { kitsSheet } from "../core/sheets/kits.ts";
import { type Workbook, withTable } from "../core/workbook.ts";

/**
 * Checks of the time before rounds were written down: each stands for the end of a round,
 * because nothing else said that one had ended. Those of a kit that its register calls not
 * ready stay as they are: it has been used since, whatever a check said.
 */
export function withChecksOfBefore(workbook: Workbook): Workbook {
	const table = workbook.tables[checksSheet.file];
	// Where a stray cell kept the new columns out, nothing is written beside it.
	if (!table?.header.some((key) => key.trim() === "purpose")) return workbook;
	const kits = textsOf(workbook, kitsSheet);
	const ready = new Set(
		kits.rows
			.filter((row) => kits.cell(row, "ready_since").trim() !== "")
			.map((row) => kits.cell(row, "kit").trim()),
	);
	const checks = textsOf(workbook, checksSheet);
	const rows = checks.rows.map((row) =>
		row.some((cell) => cell.trim() !== "") &&
		checks.cell(row, "purpose").trim() === "" &&
		ready.has(checks.cell(row, "kit").trim())
			? checks.row(row, { purpose: "in_place_of_round" })
			: row,
	);
	return withTable(workbook, checksSheet.file, { ...table, header: checks.header, rows });
}

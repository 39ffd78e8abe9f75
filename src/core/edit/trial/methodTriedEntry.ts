import { textsOf } from "../../read/textsOf.ts";
import { say } from "../../say.ts";
import { stepsSheet } from "../../sheets/steps.ts";
import { type Workbook, withTable } from "../../workbook.ts";
import { methodEntry } from "../begin/beginEntries.ts";
import type { BeginEntry } from "../begin/beginEntry.ts";
import { proposedRow } from "../begin/proposedRow.ts";
import { stepsFor } from "../begin/stepsEntry.ts";
import { meaning } from "../meaning.ts";

const { columns } = stepsSheet;

/**
 * Another method, with the steps that only it has: without them a round by it would look
 * shorter than it is. Steps that are listed already stay; those of the method before are
 * then not done, and not counted.
 */
export const methodTriedEntry: BeginEntry = {
	...methodEntry,
	help: say`Brings the steps that only this method has, where none is listed, as a proposal: check them against your unit's own protocol and the maker's instructions.`,
	write(workbook, text) {
		const written = methodEntry.write(workbook, text);
		return typeof written === "string" ? written : withOwnSteps(written);
	},
};

function withOwnSteps(workbook: Workbook): Workbook {
	const proposed = stepsFor(workbook);
	if (!proposed.ok) return workbook;
	const steps = textsOf(workbook, stepsSheet);
	const own = proposed.value.filter(({ method }) => method !== null);
	const methodOf = (row: readonly string[]) => meaning(columns.method, steps.cell(row, "method"));
	if (own.some(({ method }) => steps.rows.some((row) => methodOf(row) === method))) return workbook;
	const rows = own.map((step) => proposedRow(steps, step));
	// They stand where the loads of the other method do.
	const found = steps.rows.findIndex(
		(row) => meaning(columns.basis, steps.cell(row, "basis")) === "load",
	);
	const at = found < 0 ? steps.rows.length : found;
	return withTable(workbook, stepsSheet.file, {
		header: steps.header,
		rows: [...steps.rows.slice(0, at), ...rows, ...steps.rows.slice(at)],
	});
}

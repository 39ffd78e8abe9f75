import { say } from "../../say.ts";
import { checksSheet } from "../../sheets/checks.ts";
import type { Workbook } from "../../workbook.ts";
import { type LineTexts, lineWritten, type Written } from "./lineWritten.ts";

/** What is looked at when a kit is put together, in the order of the work; each is a column of checks.csv. */
export const checkedTests = [
	"clean",
	"bag_refills",
	"valve_moves",
	"seal_holds",
	"relief_opens",
	"suction_holds",
	"damage",
] as const;

export type CheckedTest = (typeof checkedTests)[number];

/** The text of a test that passed, or failed: damage seen is a failure. */
export function answerOf(test: CheckedTest, passed: boolean): "yes" | "no" {
	return passed === (test !== "damage") ? "yes" : "no";
}

/**
 * Writes that a kit passed every test with all its pieces: a line of checks.csv. Who says so
 * stands with it.
 *
 * @param pieces of the list of its kind
 */
export function allPassed(workbook: Workbook, texts: LineTexts, pieces: number): Written {
	if ((texts.checked_by ?? "").trim() === "")
		return { ok: false, wrong: [{ column: "checked_by", words: say`Who checked it?` }] };
	const answers = checkedTests.map((test) => [test, answerOf(test, true)]);
	const all = { ...Object.fromEntries(answers), pieces_counted: String(pieces) };
	return lineWritten(workbook, checksSheet, { ...texts, ...all });
}

/**
 * Writes what was found of a kit so far: a failure takes it out at once, whatever else is
 * still open.
 *
 * @param row of the line that the same check has already
 */
export function kitChecked(workbook: Workbook, texts: LineTexts, row?: number): Written {
	return lineWritten(workbook, checksSheet, texts, row);
}

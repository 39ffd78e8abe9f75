import assert from "node:assert/strict";
import { strFromU8, unzipSync } from "fflate";
import { plan } from "../../src/core/plan/plan.ts";
import { computedSheets } from "../../src/core/sheets/computedSheets.ts";
import type { IsoDate } from "../../src/core/values/date.ts";
import { computedCsv, problemsCsv } from "../../src/io/computedCsv.ts";
import { migrated } from "../../src/io/migrated.ts";
import { readCsv } from "../../src/io/readCsv.ts";
import { readZip } from "../io/readZip.ts";

/**
 * The results inside a saved workbook are those of a plan made anew from its sheets.
 *
 * Problems are compared without their lines: a page counts a row whose text was typed
 * over several lines as one line until the file is read again.
 *
 * @param today by the clock the page went by
 * @throws AssertionError with the first file that differs
 */
export function planAgrees(zip: Uint8Array, today: IsoDate): void {
	const inside = unzipSync(zip);
	const { workbook, problems } = readZip(zip);
	const [first] = problems.filter(({ weight }) => weight === "error");
	assert.equal(first, undefined, `a saved workbook is read again with: ${first?.message}`);
	const anew = plan(migrated(workbook), today);
	for (const { file } of computedSheets) {
		const table = anew.tables[file];
		const saved = inside[`plan/${file}`];
		assert.equal(saved && strFromU8(saved), table && computedCsv(table), `plan/${file}`);
	}
	const saved = strFromU8(inside["plan/problems.csv"] ?? new Uint8Array());
	assert.deepEqual(
		withoutLines(saved),
		withoutLines(problemsCsv(anew.problems)),
		"plan/problems.csv",
	);
}

function withoutLines(csv: string): string[] {
	const { table } = readCsv("problems.csv", csv);
	const line = table.header.indexOf("line");
	const rows = table.rows.map((cells) => cells.toSpliced(line, 1).join("|").replace(/\d+/g, "0"));
	return rows.sort();
}

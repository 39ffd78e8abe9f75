import { globSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import type { TextTable } from "../../core/workbook.ts";
import { readCsv } from "../../io/readCsv.ts";

const sample = fileURLToPath(new URL("../../../sample-csv/", import.meta.url));

/** The demo as it stands in sample-csv, in English: file → table. */
export function demoTables(): Readonly<Record<string, TextTable>> {
	return Object.fromEntries(
		globSync("*.csv", { cwd: sample })
			.sort()
			.map((file) => [file, readCsv(file, readFileSync(sample + file, "utf8")).table]),
	);
}

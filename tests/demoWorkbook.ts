import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import type { Workbook } from "../src/core/workbook.ts";
import { readFiles } from "../src/io/readFiles.ts";

const FOLDER = "sample-csv";

/** The demo as it lies in the project. */
export function demoWorkbook(): Workbook {
	const files = readdirSync(FOLDER)
		.filter((name) => name.endsWith(".csv"))
		.map((name) => ({ name, bytes: new Uint8Array(readFileSync(join(FOLDER, name))) }));
	return readFiles(files).workbook;
}

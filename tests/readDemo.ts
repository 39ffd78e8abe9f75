import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { type ReadFiles, readFiles } from "../src/io/readFiles.ts";

const FOLDER = "sample-csv";

/** The demo as it lies in the project. */
export function readDemo(): ReadFiles {
	const files = readdirSync(FOLDER)
		.filter((name) => /\.(csv|json)$/.test(name))
		.sort()
		.map((name) => ({ name, bytes: new Uint8Array(readFileSync(join(FOLDER, name))) }));
	return readFiles(files);
}

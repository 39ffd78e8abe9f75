import { readFileSync } from "node:fs";
import { basename } from "node:path/posix";
import type { Plugin } from "vite";
import { readCsv } from "../io/readCsv.ts";
import { writeCsv } from "../io/writeCsv.ts";
import { demoIn } from "./demo/demoIn.ts";
import { demoWordsOf, missingOfDemo } from "./demo/demoWordsOf.ts";

const SHEET = /\/sample-csv\/[^/]+\.csv\?raw$/;

/**
 * Builds the demo of another language into its page, from the English one and the table
 * of its names.
 *
 * @param isRelease a text without words fails a release; while the program is being
 * developed it stays English, and the build names it
 */
export function demoInLanguage(language: string, isRelease: boolean): Plugin {
	const words = demoWordsOf(language);
	const missing = missingOfDemo(words).map((text) => `demo, no translation of ${text}`);
	return {
		name: "demo-in-language",
		buildStart() {
			if (isRelease && missing.length > 0) throw new Error(missing.join("\n"));
			for (const text of missing) this.warn(text);
		},
		load: {
			order: "pre",
			handler(id) {
				if (!SHEET.test(id)) return undefined;
				const path = id.slice(0, -"?raw".length);
				const file = basename(path);
				const { table } = readCsv(file, readFileSync(path, "utf8"));
				const own = demoIn(file, table, (kind, text) => words[kind]?.[text] || text);
				return `export default ${JSON.stringify(writeCsv(own))};`;
			},
		},
	};
}

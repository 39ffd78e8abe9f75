import { globSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { build } from "vite";
import { copy } from "./instrumented.ts";

/**
 * Test files that judge src/core. Left out are the clock change, which sets the zone of the whole
 * process; expectWithin, which judges the tests themselves; edits, which loads the core afresh by
 * itself, as is done here for each mutant; typedSheets, which asks what lies in the folder; and
 * those that try whole plans or play days by the hundred, which would take seconds for each of
 * thousands of mutants. That can only let a mutant live.
 */
const TESTS = [
	"tests/core/**/*.test.ts",
	"tests/golden/*.test.ts",
	"tests/reference/**/*.test.ts",
	"tests/properties/**/*.test.ts",
];
const NOT = new RegExp(
	[
		"clockChange|expectWithin|edits|typedSheets",
		"[sS]imulation|planIsWhole|rowOrder|moreNeedsMore|dailyBirths|longTotals|longUse|played",
		"wholeRegisters|weekOfDays|properties.(orders|registers|level|forecast|chlorineAndKits)",
	].join("|"),
);

/** One script for each test file, with the broken core built in. @param asked patterns of the files; all where none is given */
export async function bundles(
	asked: readonly string[],
): Promise<readonly { source: string; script: string }[]> {
	const files = (asked.length > 0 ? asked : TESTS)
		.flatMap((pattern) => globSync(pattern, { cwd: copy }))
		.filter((file) => !NOT.test(file));
	const outDir = `${copy}bundles`;
	const named = files.map((source) => ({ source, name: source.replaceAll(/\W+/g, "-") }));
	for (const [at, { source, name }] of named.entries())
		await build({
			configFile: false,
			root: copy,
			logLevel: "error",
			resolve: { alias: { vitest: fileURLToPath(new URL("./collected.ts", import.meta.url)) } },
			build: {
				ssr: true,
				outDir,
				emptyOutDir: at === 0,
				minify: false,
				rolldownOptions: {
					input: { [name]: `${copy}${source}` },
					output: { format: "cjs", entryFileNames: "[name].cjs", codeSplitting: false },
				},
			},
		});
	return named.map(({ source, name }) => ({ source, script: `${outDir}/${name}.cjs` }));
}

import { fileURLToPath } from "node:url";
import { build } from "vite";
import { copy } from "./instrumented.ts";
import { judges } from "./judges.ts";

/** One script for each test file, with the broken core built in. @param asked patterns of the files; all where none is given */
export async function bundles(
	asked: readonly string[],
): Promise<readonly { source: string; script: string }[]> {
	const files = judges(copy, asked.length > 0 ? asked : undefined);
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

import { fileURLToPath } from "node:url";
import { build as viteBuild } from "vite";
import { copy } from "./instrumented.ts";

const standIn = fileURLToPath(new URL("./collected.ts", import.meta.url));

/** The whole program; and the same with every mutant built in behind a switch. */
export type Tree = "whole" | "broken";

/** Where the script of a source or test file lies. */
export function scriptOf(tree: Tree, file: string): string {
	return `${copy}${tree}/${file.replace(/\.ts$/, ".cjs")}`;
}

/**
 * One script for each module, as the copy of the program stands now.
 *
 * Nothing is taken away or put in another's place: modules of two builds fit together.
 *
 * @param files the test files, which stand for all that they import
 */
export async function build(tree: Tree, files: readonly string[]): Promise<void> {
	await viteBuild({
		configFile: false,
		root: copy,
		logLevel: "error",
		resolve: { alias: { vitest: standIn } },
		build: {
			ssr: true,
			outDir: `${copy}${tree}`,
			minify: false,
			rolldownOptions: {
				input: Object.fromEntries(files.map((file) => [file, `${copy}${file}`])),
				treeshake: false,
				optimization: { inlineConst: false },
				output: {
					format: "cjs",
					preserveModules: true,
					preserveModulesRoot: copy,
					entryFileNames: ({ name: module }) => `${module.replace(/\.ts$/, "")}.cjs`,
				},
			},
		},
	});
}

import { fileURLToPath } from "node:url";
import { defineConfig } from "astro/config";
import { build } from "vite";

const here = (path) => fileURLToPath(new URL(path, import.meta.url));

/** What the grid library asks for and this workbook never uses: dates, pickers, old browsers. */
const unused = ["@babel/polyfill/lib/noConflict", "moment", "pikaday"];

/**
 * Builds the workbook as one classic script. Browsers refuse module scripts over
 * file://, and the workbook has to open from a memory stick.
 */
const classicScript = {
	name: "classic-script",
	hooks: {
		"astro:build:done": ({ dir }) =>
			build({
				configFile: false,
				root: here("."),
				logLevel: "warn",
				publicDir: false,
				define: {
					"process.env.NODE_ENV": '"production"',
					setImmediate: "setTimeout",
					clearImmediate: "clearTimeout",
				},
				resolve: {
					alias: unused.map((find) => ({ find, replacement: here("src/ui/grid/nothing.ts") })),
				},
				build: {
					outDir: fileURLToPath(dir),
					emptyOutDir: false,
					target: "es2020",
					lib: {
						entry: here("src/ui/main.ts"),
						formats: ["iife"],
						name: "basinbook",
						fileName: () => "workbook.js",
						cssFileName: "workbook",
					},
				},
			}),
	},
};

export default defineConfig({
	build: { format: "file" },
	trailingSlash: "never",
	devToolbar: { enabled: false },
	integrations: [classicScript],
});

import { fileURLToPath } from "node:url";
import { defineConfig } from "astro/config";
import { build } from "vite";
import { classicScripts } from "./src/build/classicScripts.ts";
import { licences } from "./src/build/licences.ts";
import { offline } from "./src/build/offline.ts";
import { unusedOfGrid } from "./src/build/unusedOfGrid.ts";
import { usedGridRules } from "./src/build/usedGridRules.ts";
import { demoInLanguage } from "./src/messages/demoInLanguage.ts";
import { inLanguage } from "./src/messages/inLanguage.ts";
import { folderOf } from "./src/messages/languages.ts";

const here = (path) => fileURLToPath(new URL(path, import.meta.url));

/** English into dist/, every other language into a folder of its own beside it: dist/fr/. */
const language = process.env.BASINBOOK_LANGUAGE ?? "en";
const isRelease = process.env.BASINBOOK_BUILD !== "development";
const translating =
	folderOf(language) === ""
		? []
		: [inLanguage(language, isRelease), demoInLanguage(language, isRelease)];

/** What the library asks of the places it once ran in, and the files put in the place of what is not used. */
const forTheLibrary = {
	define: { setImmediate: "setTimeout", clearImmediate: "clearTimeout" },
	resolve: {
		alias: unusedOfGrid.modules.map((find) => ({
			find,
			replacement: here("src/ui/grid/library/nothing.ts"),
		})),
	},
};

/**
 * Builds the workbook as classic scripts: the one that the first screen needs, and one
 * for each part that is imported later. Browsers refuse module scripts over file://, and
 * the workbook has to open from a memory stick.
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
				plugins: [...translating, licences(unusedOfGrid.packages), classicScripts()],
				...forTheLibrary,
				css: { postcss: { plugins: [usedGridRules] } },
				define: { ...forTheLibrary.define, "process.env.NODE_ENV": '"production"' },
				build: {
					outDir: fileURLToPath(dir),
					emptyOutDir: false,
					target: "es2022",
					lib: {
						entry: here("src/ui/main.ts"),
						formats: ["cjs"],
						fileName: () => "workbook.js",
						cssFileName: "workbook",
					},
					rolldownOptions: { output: { chunkFileNames: "[name].js" } },
				},
			}),
	},
};

/** The style of the pages to read: a part of the workbook's, so that they are fetched quickly. */
const readingStyle = {
	name: "reading-style",
	hooks: {
		"astro:build:done": ({ dir }) =>
			build({
				configFile: false,
				root: here("."),
				logLevel: "warn",
				publicDir: false,
				build: {
					outDir: fileURLToPath(dir),
					emptyOutDir: false,
					rolldownOptions: {
						input: here("src/ui/style/readingPages.css"),
						output: { assetFileNames: "reading.css" },
					},
				},
			}),
	},
};

export default defineConfig({
	outDir: `dist/${folderOf(language)}`,
	// While the program is changed the page has its modules one by one: see Page.astro.
	vite: { ...forTheLibrary, plugins: translating },
	build: { format: "file" },
	trailingSlash: "never",
	devToolbar: { enabled: false },
	integrations: [classicScript, readingStyle, offline(translating)],
});

import { fileURLToPath } from "node:url";
import type { AstroIntegration } from "astro";
import { build, type PluginOption } from "vite";
import { keptFiles, SERVICE_WORKER } from "./keptFiles.ts";

const here = (path: string) => fileURLToPath(new URL(path, import.meta.url));

/**
 * Makes the built site one that is kept by the browser and opens without a network.
 * It comes last, because it lists the files that are there.
 *
 * @param translating what puts the texts into the language of the build
 */
export function offline(translating: PluginOption[]): AstroIntegration {
	return {
		name: "offline",
		hooks: {
			"astro:build:done": async ({ dir }) => {
				const site = fileURLToPath(dir);
				await script(site, "keepOffline.ts", "offline.js", translating);
				await writeServiceWorker(site);
			},
		},
	};
}

/** Writes the service worker that keeps the files as they lie in the folder now. */
export function writeServiceWorker(site: string): Promise<unknown> {
	const kept = JSON.stringify(keptFiles(site));
	return script(site, "serviceWorker.ts", SERVICE_WORKER, [], { KEPT: kept });
}

function script(
	site: string,
	source: string,
	file: string,
	plugins: PluginOption[],
	define: Record<string, string> = {},
): Promise<unknown> {
	return build({
		configFile: false,
		root: here("../.."),
		logLevel: "warn",
		publicDir: false,
		plugins,
		define,
		build: {
			outDir: site,
			emptyOutDir: false,
			target: "es2022",
			lib: {
				entry: here(`../ui/offline/${source}`),
				formats: ["iife"],
				name: "offline",
				fileName: () => file,
			},
		},
	});
}

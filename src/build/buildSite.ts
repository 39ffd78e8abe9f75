import { spawnSync } from "node:child_process";
import { parseArgs } from "node:util";
import { cataloguesThere } from "../messages/cataloguesThere.ts";
import { languages } from "../messages/languages.ts";

/**
 * npm run build: the site in every language of the list, the first at the top of dist/.
 * npm run build -- fr: only that one, into its folder.
 * npm run build -- --development: what has no translation yet stays English; then also
 * a language that is being translated and is not in the list yet.
 */
const { values, positionals } = parseArgs({
	allowPositionals: true,
	options: { development: { type: "boolean", default: false } },
});
const all: string[] = languages.map(({ code }) => code);
const known = values.development ? [...all, ...cataloguesThere()] : all;
const unknown = positionals.filter((code) => !known.includes(code));
if (unknown.length > 0) throw new Error(`Not in src/messages/languages.ts: ${unknown.join(", ")}`);

// One process each, because a build takes its language from the environment at its start.
for (const code of positionals.length > 0 ? positionals : all) {
	const { status } = spawnSync("astro", ["build"], {
		stdio: "inherit",
		shell: process.platform === "win32",
		env: {
			...process.env,
			ASTRO_TELEMETRY_DISABLED: "1",
			BASINBOOK_LANGUAGE: code,
			BASINBOOK_BUILD: values.development ? "development" : "release",
		},
	});
	if (status !== 0) process.exit(status ?? 1);
}

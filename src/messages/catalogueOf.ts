import { globSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";

const here = fileURLToPath(new URL(".", import.meta.url));

/** All translations of a language: English message → its words. @param language folder beside this file, for example "fr" */
export function catalogueOf(language: string): ReadonlyMap<string, string> {
	const files = globSync(`${language}/*.json`, { cwd: here }).sort();
	const entries = files.flatMap((file) =>
		Object.entries(JSON.parse(readFileSync(here + file, "utf8")) as Record<string, string>),
	);
	return new Map(entries);
}

import { globSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { type Catalogue, wordsOf } from "./filed.ts";

const here = fileURLToPath(new URL(".", import.meta.url));

/** All translations of a language: English message → its words. @param language folder beside this file, for example "fr" */
export function catalogueOf(language: string): ReadonlyMap<string, string> {
	return wordsOf(catalogueFiles(language));
}

/** The files of a language as they stand. */
export function catalogueFiles(language: string): Catalogue {
	const files = globSync("**/*.json", { cwd: here + language }).sort();
	return Object.fromEntries(
		files.map((file) => [
			file.replaceAll("\\", "/"),
			JSON.parse(readFileSync(`${here}${language}/${file}`, "utf8")),
		]),
	);
}

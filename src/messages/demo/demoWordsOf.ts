import { existsSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { type DemoWords, demoIn } from "./demoIn.ts";
import { demoTables } from "./demoTables.ts";
import { demoTexts } from "./demoTexts.ts";

/** Where the words of a language for the demo stand. */
export function demoFileOf(language: string): string {
	return fileURLToPath(new URL(`${language}.json`, import.meta.url));
}

/**
 * Every text of the demo with its words in a language, in the order in which the demo
 * has them; one that has none yet stands there with none.
 */
export function demoWordsOf(language: string): DemoWords {
	const file = demoFileOf(language);
	const known: DemoWords = existsSync(file) ? JSON.parse(readFileSync(file, "utf8")) : {};
	const all: Record<string, Record<string, string>> = Object.fromEntries(
		Object.keys(demoTexts).map((kind) => [kind, {}]),
	);
	for (const [name, table] of Object.entries(demoTables()))
		demoIn(name, table, (kind, text) => {
			Object.assign(all[kind] ?? {}, { [text]: known[kind]?.[text] ?? "" });
			return text;
		});
	return all;
}

/** The texts of the demo without words, as "kind: text". */
export function missingOfDemo(words: DemoWords): string[] {
	return Object.entries(words).flatMap(([kind, texts]) =>
		Object.keys(texts)
			.filter((text) => texts[text] === "")
			.map((text) => `${kind}: ${text}`),
	);
}

import { mkdirSync, rmSync, writeFileSync } from "node:fs";
import { dirname } from "node:path";
import { fileURLToPath } from "node:url";
import { catalogueFiles } from "./catalogueOf.ts";
import { cataloguesThere } from "./cataloguesThere.ts";
import { demoFileOf, demoWordsOf, missingOfDemo } from "./demo/demoWordsOf.ts";
import { filed } from "./filed.ts";
import { gathered } from "./gathered.ts";
import { TERMS_FILE, termsText } from "./termsInLanguages.ts";
import { WORDS_FILE, wordsText } from "./wordsOfChoices.ts";

/**
 * npm run messages: puts the catalogue of every language in order.
 * npm run messages -- pt: also that of a language that is not in the list yet, from the
 * first word on.
 */
const here = fileURLToPath(new URL(".", import.meta.url));
const messages = gathered();

for (const language of cataloguesThere(process.argv.slice(2))) {
	const { files, missing, spare } = filed(messages, catalogueFiles(language));
	rmSync(here + language, { recursive: true, force: true });
	for (const [file, entries] of Object.entries(files)) {
		const path = `${here}${language}/${file}`;
		mkdirSync(dirname(path), { recursive: true });
		writeFileSync(path, `${JSON.stringify(entries, null, "\t")}\n`);
	}
	const demo = demoWordsOf(language);
	writeFileSync(demoFileOf(language), `${JSON.stringify(demo, null, "\t")}\n`);
	const lines = [
		`${language}: ${messages.size} messages, ${missing.length} without words`,
		...missing.map(([message, file]) => `  src/messages/${language}/${file}: ${message}`),
		...missingOfDemo(demo).map((text) => `  src/messages/demo/${language}.json: ${text}`),
		...spare.map(([message, words]) => `  taken out, said no longer: ${message} → ${words}`),
	];
	process.stdout.write(`${lines.join("\n")}\n`);
}
writeFileSync(here + WORDS_FILE, wordsText());
mkdirSync(dirname(here + TERMS_FILE), { recursive: true });
writeFileSync(here + TERMS_FILE, termsText());

import { readdirSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { translations } from "./languages.ts";

const here = fileURLToPath(new URL(".", import.meta.url));
/** Beginning of a code as BCP 47 has it: no other folder here is named so. */
const CODE = /^[a-z]{2,3}(-|$)/;

/**
 * Every language with a catalogue: those of the list, those whose folder lies here and
 * is still being translated, and those that are asked for, whose folder is to be made.
 */
export function cataloguesThere(askedFor: readonly string[] = []): string[] {
	const wrong = askedFor.find((code) => !CODE.test(code));
	if (wrong) throw new Error(`"${wrong}" is no code of a language, such as "sw" or "pt-BR".`);
	const folders = readdirSync(here, { withFileTypes: true })
		.filter((entry) => entry.isDirectory() && CODE.test(entry.name))
		.map(({ name }) => name);
	return [...new Set([...translations, ...folders, ...askedFor])].sort();
}

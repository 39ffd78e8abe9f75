import { globSync, readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { catalogueOf } from "./catalogueOf.ts";
import { messagesIn } from "./messagesIn.ts";

const root = fileURLToPath(new URL("../../", import.meta.url));
const english = fileURLToPath(new URL("./en.json", import.meta.url));

/** Every message of the program with the first file that says it, in alphabetical order. */
export function gathered(): Record<string, string> {
	const files = globSync("src/{core,io,ui,components,layouts,pages}/**/*.{ts,astro}", {
		cwd: root,
	});
	const all = files.sort().flatMap((file) => {
		const source = readFileSync(root + file, "utf8");
		const messages = file.endsWith(".astro") ? inAstro(source) : messagesIn(source, file);
		return messages.map(({ message }) => [message, file] as const);
	});
	return Object.fromEntries(all.reverse().sort(([a], [b]) => (a < b ? -1 : a > b ? 1 : 0)));
}

/** Messages of a page's template, each on its own: no message stands within another there. */
function inAstro(source: string): { message: string }[] {
	return [...source.matchAll(/say`[^`]*`/g)].flatMap(([text]) => messagesIn(text, "page.ts"));
}

/** The English catalogue as its file has it. */
export function written(messages: Record<string, string>): string {
	return `${JSON.stringify(messages, null, "\t")}\n`;
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
	const messages = gathered();
	writeFileSync(english, written(messages));
	const french = catalogueOf("fr");
	const missing = Object.keys(messages).filter((message) => !french.has(message));
	const list = missing.map((message) => `${messages[message]}: ${message}\n`);
	process.stdout.write(
		`${Object.keys(messages).length} messages; ${missing.length} without French\n${list.join("")}`,
	);
}

import { globSync, readFileSync } from "node:fs";
import { dirname } from "node:path/posix";
import { fileURLToPath } from "node:url";
import { messagesIn } from "./messagesIn.ts";

const source = fileURLToPath(new URL("../", import.meta.url));

/**
 * Every message of the program and the folder that says it, from src: "core/kits".
 * A message that several folders say belongs to the first of them by name.
 */
export function gathered(): ReadonlyMap<string, string> {
	const files = globSync("{core,io,ui,components,layouts,pages}/**/*.{ts,astro}", { cwd: source });
	const found = new Map<string, string>();
	for (const file of files.map((path) => path.replaceAll("\\", "/")).sort(byFolder)) {
		const text = readFileSync(source + file, "utf8");
		const messages = file.endsWith(".astro") ? inAstro(text) : messagesIn(text, file);
		for (const { message } of messages) if (!found.has(message)) found.set(message, dirname(file));
	}
	return found;
}

function byFolder(one: string, other: string): number {
	return dirname(one) < dirname(other) ? -1 : dirname(one) > dirname(other) ? 1 : 0;
}

/** Messages of a page's template, each on its own: no message stands within another there. */
function inAstro(source: string): { message: string }[] {
	return [...source.matchAll(/say(\.safety)?`[^`]*`/g)].flatMap(([text]) =>
		messagesIn(text, "page.ts"),
	);
}

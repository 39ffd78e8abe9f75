import { readdirSync, readFileSync } from "node:fs";
import { join, relative } from "node:path";
import { folderOf, languages } from "../../messages/languages.ts";
import { hashOf, SERVICE_WORKER } from "../keptFiles.ts";

/**
 * The built site without the languages that do not come along: their folders and what
 * leads to them. What is kept offline follows, should somebody put the folder on a server.
 *
 * @returns the files by their path within the site
 */
export function programOf(site: string, carried: readonly string[]): Record<string, Uint8Array> {
	const left = languages.map(({ code }) => code).filter((code) => !carried.includes(code));
	const isCarried = (path: string) => !left.some((code) => path.startsWith(folderOf(code)));
	const files = Object.fromEntries(
		readdirSync(site, { recursive: true, withFileTypes: true })
			.filter((entry) => entry.isFile())
			.map((entry) => join(entry.parentPath, entry.name))
			.map((path) => [relative(site, path).replaceAll("\\", "/"), path] as const)
			.filter(([name]) => isCarried(name))
			.map(([name, path]) => [name, new Uint8Array(readFileSync(path))] as const),
	);
	if (left.length > 0) leaveOut(files, left);
	return files;
}

/** Takes languages out of the lists of all pages, and the changed pages into what is kept offline. */
function leaveOut(files: Record<string, Uint8Array>, left: readonly string[]): void {
	const hashes = new Map<string, string>();
	for (const [name, content] of Object.entries(files)) {
		if (!name.endsWith(".html")) continue;
		files[name] = bytes(left.reduce(withoutLanguage, text(content)));
		hashes.set(hashOf(content), hashOf(files[name]));
	}
	for (const [name, content] of Object.entries(files))
		if (name.endsWith(SERVICE_WORKER))
			files[name] = bytes(
				[...hashes].reduce((script, [was, is]) => script.replaceAll(was, is), text(content)),
			);
}

/** A page whose list of languages leads to one less. */
function withoutLanguage(page: string, code: string): string {
	return page.replaceAll(new RegExp(`<li data-language="${code}"[^]*?</li>`, "g"), "");
}

const text = (content: Uint8Array) => new TextDecoder().decode(content);
const bytes = (content: string) => new TextEncoder().encode(content);

import { createHash } from "node:crypto";
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join, relative } from "node:path";

/** What a browser keeps so that the site opens without a network. */
export interface KeptFiles {
	/** Made from the contents of all files: another site, another version. */
	readonly version: string;
	/** Every file, as an address from the site's folder, and the hash of what must be in it. */
	readonly files: Readonly<Record<string, string>>;
}

/** The script that keeps them; it is not among them, because the browser looks after it itself. */
export const SERVICE_WORKER = "serviceWorker.js";

/**
 * Lists every file of a built site. A folder with a service worker of its own, such
 * as the site in another language, keeps its own files.
 */
export function keptFiles(site: string): KeptFiles {
	const files = Object.fromEntries(
		filesBelow(site)
			.map((path) => [relative(site, path).replaceAll("\\", "/"), hashOf(readFileSync(path))])
			.sort(),
	);
	const version = createHash("sha256").update(JSON.stringify(files)).digest("hex").slice(0, 16);
	return { version, files };
}

function filesBelow(folder: string): string[] {
	return readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
		const path = join(folder, entry.name);
		if (entry.isDirectory()) return existsSync(join(path, SERVICE_WORKER)) ? [] : filesBelow(path);
		return entry.name === SERVICE_WORKER ? [] : [path];
	});
}

/** As the list of kept files names a content. */
export function hashOf(content: Uint8Array): string {
	return `sha256-${createHash("sha256").update(content).digest("base64")}`;
}

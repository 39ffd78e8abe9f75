import { readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { gzipSync } from "node:zlib";

/** Files that a page's HTML asks for as it opens; links to other pages are none. */
const ASKED = /<(?:script|link)\b[^>]*?\b(?:src|href)="([^"#]+)"/g;

/** What a page of the built site costs to fetch, with all that it asks for. */
export interface PageBytes {
	readonly raw: number;
	/** As a server sends it: gzip, level 9. */
	readonly compressed: number;
}

/** @param path of the page's HTML file. @throws where it asks for a file that is not there */
export function pageBytes(path: string): PageBytes {
	const html = readFileSync(path, "utf8");
	const asked = [...html.matchAll(ASKED)].map(([, file]) => join(dirname(path), file as string));
	const files = [path, ...new Set(asked)].map((file) => readFileSync(file));
	return {
		raw: files.reduce((sum, { length }) => sum + length, 0),
		compressed: files.reduce((sum, file) => sum + gzipSync(file, { level: 9 }).length, 0),
	};
}

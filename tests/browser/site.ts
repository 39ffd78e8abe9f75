import { cpSync, existsSync, mkdtempSync, readFileSync, rmSync } from "node:fs";
import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import { tmpdir } from "node:os";
import { extname, join } from "node:path";
import { pathToFileURL } from "node:url";

const dist = join(import.meta.dirname, "../../dist");
const types: Record<string, string> = {
	".html": "text/html; charset=utf-8",
	".js": "text/javascript",
	".css": "text/css",
	".svg": "image/svg+xml",
	".png": "image/png",
	".txt": "text/plain",
	".webmanifest": "application/manifest+json",
};

/** The built site at one address, and how to take it down again. */
export interface Site {
	readonly address: string;
	close(): void;
}

/** The folder that the build wrote. */
export function builtSite(): string {
	if (!existsSync(join(dist, "workbook.js")))
		throw new Error("The site is not built: run npm run build before the browser tests.");
	return dist;
}

/** The built site, served over http from this machine. */
export function servedSite(): Promise<Site> {
	return servedFolder(builtSite(), "/");
}

/** A folder served over http, as the path `under` of this machine; the path ends with "/". */
export async function servedFolder(folder: string, under: string): Promise<Site> {
	const server = createServer((request, response) => {
		const asked = new URL(request.url ?? "/", "http://localhost").pathname;
		const path = asked.startsWith(under) ? asked.slice(under.length) : "outside";
		const file = join(folder, path || "index.html");
		if (!file.startsWith(folder) || !existsSync(file)) return response.writeHead(404).end();
		return response
			.writeHead(200, { "content-type": types[extname(file)] ?? "application/octet-stream" })
			.end(readFileSync(file));
	});
	await new Promise<void>((ready) => server.listen(0, "127.0.0.1", ready));
	const { port } = server.address() as AddressInfo;
	const close = () => {
		server.close();
		server.closeAllConnections();
	};
	return { address: `http://127.0.0.1:${port}${under}`, close };
}

/** The built site as on a memory stick: a folder with spaces in its name, opened over file://. */
export async function siteOnStick(): Promise<Site> {
	const stick = mkdtempSync(join(tmpdir(), "memory stick of the ward "));
	cpSync(builtSite(), stick, { recursive: true });
	return {
		address: `${pathToFileURL(stick).href}/`,
		close: () => rmSync(stick, { recursive: true }),
	};
}

import { createHash } from "node:crypto";
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { keptFiles } from "../../src/build/keptFiles.ts";

describe("what a browser keeps of a site", () => {
	let site: string;
	beforeEach(() => {
		site = mkdtempSync(join(tmpdir(), "basinbook site "));
		write("index.html", "the page");
		write("deep/er.txt", "a text");
		write("serviceWorker.js", "itself");
	});
	afterEach(() => rmSync(site, { recursive: true }));

	function write(file: string, text: string): void {
		mkdirSync(dirname(join(site, file)), { recursive: true });
		writeFileSync(join(site, file), text);
	}

	test("is every file but the service worker, with the hash of what is in it", () => {
		const hash = createHash("sha256").update("the page").digest("base64");
		expect(Object.keys(keptFiles(site).files)).toEqual(["deep/er.txt", "index.html"]);
		expect(keptFiles(site).files["index.html"]).toBe(`sha256-${hash}`);
	});

	test("leaves out a folder that keeps its own", () => {
		write("fr/index.html", "la page");
		expect(Object.keys(keptFiles(site).files)).toContain("fr/index.html");
		write("fr/serviceWorker.js", "itself");
		expect(Object.keys(keptFiles(site).files)).toEqual(["deep/er.txt", "index.html"]);
	});

	test("is another version where any content or name is another, and the same where none is", () => {
		const { version } = keptFiles(site);
		write("serviceWorker.js", "changed");
		expect(keptFiles(site).version).toBe(version);
		write("deep/er.txt", "another text");
		const changed = keptFiles(site).version;
		expect(changed).not.toBe(version);
		write("new.txt", "");
		expect(keptFiles(site).version).not.toBe(changed);
	});
});

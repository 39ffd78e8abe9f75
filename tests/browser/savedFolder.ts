import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll } from "vitest";

/** A folder for what the tests of a file save, with spaces in its name as people's have; it goes when they have run. */
export function savedFolder(): string {
	const folder = mkdtempSync(join(tmpdir(), "basinbook saved "));
	afterAll(() => rmSync(folder, { recursive: true }));
	return folder;
}

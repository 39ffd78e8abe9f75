import { existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { dirname } from "node:path";
import { expect } from "vitest";

const renews = process.env.RENEW_FIXTURES === "1";

/**
 * A file of the project holds what was last looked at and found right.
 *
 * `npm run fixtures` takes the present over into all such files; read the difference
 * (`git diff`) before committing it.
 *
 * @param present a text, or what is written as JSON
 */
export function expectGolden(path: string, present: unknown): void {
	const text = typeof present === "string" ? present : inJson(present);
	if (renews) write(path, text);
	const golden = existsSync(path) ? readFileSync(path, "utf8") : "no such file yet";
	expect(text, "where it was meant: npm run fixtures, and read git diff").toBe(golden);
}

/** What a file of the project holds in parts, for tests that look at one each. @param present asked for where the file is renewed */
export function goldenAt(
	path: string,
	present: () => Readonly<Record<string, string>>,
): Readonly<Record<string, string>> {
	if (renews) write(path, inJson(present()));
	return JSON.parse(readFileSync(path, "utf8"));
}

function inJson(present: unknown): string {
	return `${JSON.stringify(present, null, "\t")}\n`;
}

function write(path: string, text: string): void {
	mkdirSync(dirname(path), { recursive: true });
	writeFileSync(path, text);
}

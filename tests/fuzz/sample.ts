import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import type { NamedBytes } from "../../src/io/unzip.ts";

const folder = join(import.meta.dirname, "../../sample-csv");

/** One file of the invented unit. @param lines how many of its lines, the first one with the rest */
export function sampleFile(name: string, lines = Number.POSITIVE_INFINITY): Uint8Array {
	const text = readFileSync(join(folder, name), "utf8");
	return new TextEncoder().encode(text.split("\n").slice(0, lines).join("\n"));
}

/** All sheets of the invented unit, as a person hands them over. */
export const sampleFiles: readonly NamedBytes[] = readdirSync(folder)
	.filter((name) => name.endsWith(".csv"))
	.map((name) => ({ name, bytes: sampleFile(name) }));

import { createHash } from "node:crypto";
import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import type { Mutant } from "./instrumented.ts";

const path = fileURLToPath(new URL("../../coverage/mutants-noticed.json", import.meta.url));

/**
 * Mutants that an earlier run saw noticed, so that a run that was ended, or that follows new tests,
 * only tries the others. One counts as long as its source file is the same to the letter; whoever
 * takes tests away deletes the file first.
 */
export class Kept {
	readonly #noticed = new Set<string>(
		existsSync(path) ? JSON.parse(readFileSync(path, "utf8")) : [],
	);
	readonly #sources = new Map<string, string>();

	has(mutant: Mutant): boolean {
		return this.#noticed.has(this.#key(mutant));
	}

	add(mutant: Mutant): void {
		this.#noticed.add(this.#key(mutant));
	}

	save(): void {
		writeFileSync(path, JSON.stringify([...this.#noticed]));
	}

	#key({ file, line, column, mutator, replacement }: Mutant): string {
		let source = this.#sources.get(file);
		if (!source) {
			const bytes = readFileSync(new URL(`../../${file}`, import.meta.url));
			source = createHash("sha256").update(bytes).digest("hex").slice(0, 16);
			this.#sources.set(file, source);
		}
		return [source, line, column, mutator, replacement].join(" ");
	}
}

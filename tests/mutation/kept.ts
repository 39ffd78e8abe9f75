import { createHash } from "node:crypto";
import { existsSync, globSync, readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import type { Mutant } from "./instrumented.ts";
import type { Fate } from "./report.ts";

const root = fileURLToPath(new URL("../../", import.meta.url));
const path = `${root}coverage/mutants.json`;

/**
 * What became of mutants in earlier runs, so that a run that was ended, or that follows new tests,
 * only tries the others. It counts as long as the mutant's source file is the same to the letter;
 * that nothing noticed it, as long as every test is too. Whoever takes tests away deletes the file
 * first.
 */
export class Kept {
	readonly #fates: Record<string, string> = existsSync(path)
		? JSON.parse(readFileSync(path, "utf8"))
		: {};
	/** The tests, and which of them are asked. */
	readonly #tests: string;
	readonly #sources = new Map<string, string>();

	constructor(asked: readonly string[]) {
		this.#tests = digest(
			...asked,
			...globSync("tests/{core,golden,properties,reference}/**/*.ts", { cwd: root })
				.sort()
				.map((file) => readFileSync(root + file, "utf8")),
		);
	}

	fateOf(mutant: Mutant): Fate | undefined {
		const [fate, tests] = (this.#fates[this.#key(mutant)] ?? "").split(" by ");
		if (!fate || (tests !== undefined && tests !== this.#tests)) return undefined;
		return fate as Fate;
	}

	add(mutant: Mutant, fate: Fate): void {
		const noticed = fate === "killed" || fate === "never ends";
		this.#fates[this.#key(mutant)] = noticed ? fate : `${fate} by ${this.#tests}`;
	}

	save(): void {
		writeFileSync(path, JSON.stringify(this.#fates));
	}

	/**
	 * In an order by chance, which is the same in the next run where nothing has changed. Other
	 * tests draw others: a sample whose survivors they were written for must not judge them.
	 */
	drawn(mutants: readonly Mutant[]): Mutant[] {
		return mutants
			.map((mutant) => ({ mutant, place: digest(this.#tests, this.#key(mutant)) }))
			.sort((a, b) => (a.place < b.place ? -1 : 1))
			.map(({ mutant }) => mutant);
	}

	/** What stood there is part of it: several parts of one condition may begin at the same place. */
	#key({ file, line, column, mutator, original, replacement }: Mutant): string {
		let source = this.#sources.get(file);
		if (!source) {
			source = digest(readFileSync(root + file, "utf8"));
			this.#sources.set(file, source);
		}
		return [source, line, column, mutator, digest(original, " → ", replacement)].join(" ");
	}
}

function digest(...texts: readonly string[]): string {
	const hash = createHash("sha256");
	for (const text of texts) hash.update(text);
	return hash.digest("hex").slice(0, 16);
}

import { basename, dirname } from "node:path";
import type { Mutant } from "./instrumented.ts";
import type { Ran } from "./runner.ts";

/** Some tests of a file, and how long they take with nothing broken. */
export interface Asking {
	readonly source: string;
	readonly names: readonly string[];
	readonly ms: number;
}

/** Tests are asked until these would take so long with nothing broken, which can only let a mutant live. */
const MOST_MS = 6000;
/** Tests that come by fewer mutants are of one calculation, the others of whole plans. */
const WHOLE_PLANS = 2000;
/** Load every module and plan nothing: they hold what a mutant changes while modules load, examples among it. */
const DEFINITIONS = ["tests/golden/definitions.test.ts", "tests/core/calculations.test.ts"];
/**
 * The examples of calculations that a module keeps to itself, what they give around them, and where
 * every figure comes from: asked last, however long whole plans take that bring them to light,
 * because nothing else holds them.
 */
const INSIDE = "tests/core/calculationsInside.test.ts";

/** Which tests are asked about a mutant, and in which order. */
export class Tasks {
	readonly #files: readonly Ran[];
	readonly #met: ReadonlyMap<Ran, Uint8Array>;
	readonly #definitions: readonly Ran[];
	/** How many mutants of a source file a file of tests has noticed so far. */
	readonly #noticed = new Map<string, Map<string, number>>();

	constructor(files: readonly Ran[]) {
		this.#met = new Map(files.map((file) => [file, metBy(file)]));
		const reaches = new Map(files.map((file) => [file, count(this.#met.get(file))]));
		const reach = (file: Ran) => reaches.get(file) ?? 0;
		const byReach = [...files].sort((a, b) => reach(a) - reach(b));
		// Of one calculation, the most special first; then of whole plans, the widest first.
		const special = byReach.filter((file) => reach(file) < WHOLE_PLANS);
		const whole = byReach.filter((file) => reach(file) >= WHOLE_PLANS).reverse();
		this.#files = [...special, ...whole];
		this.#definitions = files.filter(({ source }) => DEFINITIONS.includes(source));
	}

	of({ id, file: source }: Mutant): readonly Asking[] {
		const mutant = Number(id);
		const task: Asking[] = [];
		let left = MOST_MS;
		for (const file of this.#filesFor(mutant, source)) {
			if (!this.#met.get(file)?.[mutant]) continue;
			const names: string[] = [];
			let ms = file.loadMs;
			let isMet = file.loading[mutant] === 1;
			const isFree = file.source === INSIDE;
			for (const test of file.tests) {
				// What one test works out, the later ones of its file may find remembered.
				isMet ||= test.met[mutant] === 1;
				if (!isMet) continue;
				if (!isFree && ms + test.ms > left) continue;
				names.push(test.name);
				ms += test.ms;
			}
			if (names.length === 0) continue;
			task.push({ source: file.source, names, ms });
			if (!isFree) left -= ms;
		}
		return task;
	}

	/** A test file that noticed one mutant of a source file may well notice the next. */
	noticed({ file }: Mutant, { source }: Asking): void {
		const counts = this.#noticed.get(file) ?? new Map<string, number>();
		this.#noticed.set(file, counts.set(source, (counts.get(source) ?? 0) + 1));
	}

	/**
	 * What belongs to the broken file comes before all that only comes by it; of those as near,
	 * what has noticed most so far.
	 */
	#filesFor(mutant: number, source: string): readonly Ran[] {
		const folder = dirname(source).replace(/^src/, "tests");
		const own = basename(source, ".ts");
		const noticed = this.#noticed.get(source);
		// It changes something while modules load.
		const isDefinition = this.#definitions.some(({ loading }) => loading[mutant] === 1);
		const nearness = (file: Ran) => {
			if (isDefinition && this.#definitions.includes(file)) return 0;
			const name = basename(file.source, ".test.ts");
			// strength.test.ts is of strengthTable.ts as well.
			if (own.startsWith(name) || name.startsWith(own)) return 1;
			if (dirname(file.source) === folder) return 2;
			return file.source === INSIDE ? 4 : 3;
		};
		return this.#files
			.map((file) => ({ file, near: nearness(file), by: noticed?.get(file.source) ?? 0 }))
			.sort((a, b) => a.near - b.near || b.by - a.by)
			.map(({ file }) => file);
	}
}

/** 1 for each mutant that a file comes by. */
function metBy({ loading, tests }: Ran): Uint8Array {
	const met = Uint8Array.from(loading);
	for (const test of tests) for (const [at, one] of test.met.entries()) met[at] ||= one;
	return met;
}

function count(met: Uint8Array = new Uint8Array()): number {
	return met.reduce((sum, one) => sum + one, 0);
}

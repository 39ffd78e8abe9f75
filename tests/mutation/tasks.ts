import { basename, dirname } from "node:path";
import type { Mutant } from "./instrumented.ts";
import type { Ran } from "./runner.ts";
import type { Task } from "./worker.ts";

/** Tests are asked until these would take so long with nothing broken, which can only let a mutant live. */
const MOST_MS = 20_000;
/** Tests that come by fewer mutants are of one calculation, the others of whole plans. */
const WHOLE_PLANS = 2000;
/** Load every module and plan nothing: they hold what a mutant changes while modules load, examples among it. */
const DEFINITIONS = ["tests/golden/definitions.test.ts", "tests/core/calculations.test.ts"];
/**
 * The examples of calculations that a module keeps to itself, what they give around them, and where
 * every figure comes from: asked after what belongs to the module, however long whole plans take
 * that bring them to light, because nothing else holds them.
 */
const INSIDE = "tests/core/calculationsInside.test.ts";

/** Which tests are asked about a mutant, and in which order. */
export class Tasks {
	readonly #files: readonly Ran[];
	readonly #met: ReadonlyMap<Ran, ReadonlySet<string>>;
	readonly #definitions: readonly Ran[];

	constructor(files: readonly Ran[]) {
		this.#met = new Map(
			files.map((file) => [
				file,
				new Set([...file.loading, ...file.tests.flatMap(({ mutants }) => [...mutants])]),
			]),
		);
		const reach = (file: Ran) => this.#met.get(file)?.size ?? 0;
		const byReach = [...files].sort((a, b) => reach(a) - reach(b));
		// Of one calculation, the most special first; then of whole plans, the widest first.
		const special = byReach.filter((file) => reach(file) < WHOLE_PLANS);
		const whole = byReach.filter((file) => reach(file) >= WHOLE_PLANS).reverse();
		this.#files = [...special, ...whole];
		this.#definitions = files.filter(({ source }) => DEFINITIONS.includes(source));
	}

	of({ id: mutant, file: source }: Mutant): Task {
		const task = { mutant, files: [] as { file: string; names: string[] }[], ms: 0 };
		for (const file of this.#filesFor(mutant, source)) {
			if (!this.#met.get(file)?.has(mutant)) continue;
			const names: string[] = [];
			let ms = file.loadMs;
			let isMet = file.loading.has(mutant);
			const isFree = file.source === INSIDE;
			for (const test of file.tests) {
				// What one test works out, the later ones of its file may find remembered.
				isMet ||= test.mutants.has(mutant);
				if (!isMet) continue;
				if (!isFree && task.ms + ms + test.ms > MOST_MS) continue;
				names.push(test.name);
				ms += test.ms;
			}
			if (names.length === 0) continue;
			task.files.push({ file: file.script, names });
			if (!isFree) task.ms += ms;
		}
		return task;
	}

	/** Whether it changes something while modules load. */
	#isDefinition(mutant: string): boolean {
		return this.#definitions.some(({ loading }) => loading.has(mutant));
	}

	/** What belongs to the broken file comes before all that only comes by it. */
	#filesFor(mutant: string, source: string): readonly Ran[] {
		const folder = dirname(source).replace(/^src/, "tests");
		const own = basename(source, ".ts");
		const isDefinition = this.#isDefinition(mutant);
		const nearness = (file: Ran) => {
			if (isDefinition && this.#definitions.includes(file)) return 0;
			const name = basename(file.source, ".test.ts");
			// strength.test.ts is of strengthTable.ts as well.
			if (own.startsWith(name) || name.startsWith(own)) return 1;
			if (dirname(file.source) === folder) return 2;
			if (file.source === INSIDE) return 3;
			return dirname(file.source) === dirname(folder) ? 4 : 5;
		};
		return [...this.#files].sort((a, b) => nearness(a) - nearness(b));
	}
}

import { Chance } from "./chance.ts";
import type { Coverage } from "./coverage.ts";
import { mutated } from "./mutated.ts";
import { smallest } from "./smallest.ts";

/** One way into the program, and what must hold whatever comes in. */
export interface Reader {
	readonly name: string;
	/** Inputs that are right, to begin with. */
	readonly seeds: readonly Uint8Array[];
	/** Pieces that mean something to this reader. */
	readonly words: readonly Uint8Array[];
	/** A case takes longer than a look at the coverage: it is looked at after each. */
	readonly slow?: boolean;
	/** @throws where anything that must hold does not. */
	check(input: Uint8Array): void | Promise<void>;
}

export interface Find {
	readonly reader: string;
	readonly what: string;
	readonly input: Uint8Array;
}

export interface Fuzzed {
	readonly reader: string;
	readonly cases: number;
	/** Inputs kept because they reached what none before had. */
	readonly kept: number;
	/** Blocks of code reached. */
	readonly reached: number;
	readonly slowestMs: number;
	readonly finds: readonly Find[];
}

const BATCH = 512;
const MOST_FINDS = 20;

/**
 * Feeds a reader with mutated inputs, and goes on from those that reach new code.
 *
 * Coverage is looked at once a batch, because looking costs more than reading; a
 * batch that reached something new is run again in halves, to see which input did.
 */
export async function fuzzed(
	reader: Reader,
	cases: number,
	seed: number,
	coverage: Coverage,
): Promise<Fuzzed> {
	const chance = new Chance(seed);
	const corpus = [...reader.seeds];
	const reached = new Set<string>();
	const finds = new Map<string, Find>();
	let slowestMs = 0;
	const tryOne = async (input: Uint8Array) => {
		const started = performance.now();
		const what = await trouble(reader, input);
		slowestMs = Math.max(slowestMs, performance.now() - started);
		if (what !== undefined && !finds.has(what) && finds.size < MOST_FINDS)
			finds.set(what, { reader: reader.name, what, input });
	};
	const keepNew = async (
		inputs: readonly Uint8Array[],
		run: (input: Uint8Array) => Promise<unknown>,
	): Promise<void> => {
		for (const input of inputs) await run(input);
		const blocks = [...coverage.blocks()];
		if (blocks.every((block) => reached.has(block))) return;
		const half = Math.ceil(inputs.length / 2);
		if (half === inputs.length) {
			for (const block of blocks) reached.add(block);
			corpus.push(...inputs);
		} else
			for (const part of [inputs.slice(0, half), inputs.slice(half)]) await keepNew(part, again);
	};
	const again = (input: Uint8Array) => trouble(reader, input);
	coverage.blocks();
	for (const input of corpus) await tryOne(input);
	for (const block of coverage.blocks()) reached.add(block);
	const size = reader.slow ? 1 : BATCH;
	for (let done = 0; done < cases; done += size) {
		const stock = () => ({ words: reader.words, other: chance.pick(corpus) });
		const batch = Array.from({ length: Math.min(size, cases - done) }, () => {
			// The inputs found last are where the new code is.
			const from = chance.once(2) ? corpus.slice(-16) : corpus;
			return mutated(chance.pick(from), chance, stock());
		});
		await keepNew(batch, tryOne);
	}
	const small: Find[] = [];
	for (const find of finds.values()) {
		const isTrue = async (input: Uint8Array) => (await trouble(reader, input)) === find.what;
		small.push({ ...find, input: await smallest(find.input, isTrue) });
	}
	return {
		reader: reader.name,
		cases,
		kept: corpus.length,
		reached: reached.size,
		slowestMs,
		finds: small,
	};
}

/** What went wrong, without the parts that differ from input to input. */
async function trouble(reader: Reader, input: Uint8Array): Promise<string | undefined> {
	try {
		const checking = reader.check(input);
		if (checking) await checking;
		return undefined;
	} catch (error) {
		const { message, stack } = error as Error;
		const [place = ""] = (stack ?? "").match(/[\w.]+\.ts:\d+/) ?? [];
		return `${message.split("\n", 1)[0]?.replace(/\d+/g, "n").slice(0, 160)} (${place})`;
	}
}

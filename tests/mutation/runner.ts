import { readFileSync } from "node:fs";
import { scriptOf, type Tree } from "./built.ts";
import type { Loaded } from "./collected.ts";
import { compiled, load, type Script, script } from "./modules.ts";
import { brokenBy, noted, noting, withMutant } from "./switches.ts";

/** A test file with nothing broken: how long it and each of its tests took, and the mutants they came by. */
export interface Ran {
	readonly source: string;
	readonly loadMs: number;
	/** 1 for each mutant that it came by before its first test. */
	readonly loading: Uint8Array;
	readonly tests: readonly {
		readonly name: string;
		readonly ms: number;
		/** 1 for each mutant that it came by. */
		readonly met: Uint8Array;
	}[];
}

/** Slower tests are never asked, which can only let a mutant live. */
const MOST_MS_OF_TEST = 1000;

/**
 * Runs every test of a file twice with nothing broken: to time it, and to note the mutants it
 * comes by. Tests that wait for something are left out: what is asked thousands of times answers
 * at once.
 *
 * @throws Error where one fails
 */
export function dryRun(source: string, mutants: number): Ran {
	const begun = workedMs();
	const whole = prepared("whole", source).tests;
	const loadMs = workedMs() - begun;
	const timed = new Map(
		whole.flatMap(({ name, run }): [string, number][] => {
			const from = workedMs();
			const waits = tried(source, name, run);
			const ms = workedMs() - from;
			return waits || ms > MOST_MS_OF_TEST ? [] : [[name, ms]];
		}),
	);
	let tests: Loaded["tests"] = [];
	const loading = noted(mutants, () => {
		tests = prepared("broken", source, (path) => script(path, noting)).tests;
	});
	return {
		source,
		loadMs,
		loading,
		tests: tests.flatMap(({ name, run }) => {
			const ms = timed.get(name);
			if (ms === undefined) return [];
			return [{ name, ms, met: noted(mutants, () => tried(source, name, run)) }];
		}),
	};
}

/** Work of this process so far: a clock would count what others do on the machine. */
function workedMs(): number {
	const { user, system } = process.cpuUsage();
	return (user + system) / 1000;
}

/** True for a test that waits for something. */
function tried(source: string, name: string, run: () => unknown): boolean {
	try {
		const waits = run();
		if (waits instanceof Promise) waits.catch(() => {});
		return waits instanceof Promise;
	} catch (error) {
		throw new Error(`${source}: ${name} fails with nothing broken`, { cause: error });
	}
}

/** Loads a file's tests, and does what must be done before them. */
function prepared(tree: Tree, source: string, scriptAt: (path: string) => Script = script): Loaded {
	load(scriptOf(tree, source), scriptAt);
	const file = (globalThis as unknown as { loaded: Loaded }).loaded;
	for (const prepare of file.before) prepare();
	return file;
}

/** A mutant, and the source file that it breaks. */
export interface Broken {
	readonly id: string;
	readonly file: string;
}

let latest: { readonly id: string; readonly script: Script } | undefined;

/** True where one of these tests of a file fails with the mutant in place: it is killed. */
export function kills({ id, file }: Broken, source: string, names: readonly string[]): boolean {
	const path = scriptOf("whole", file);
	if (latest?.id !== id) {
		const text = readFileSync(scriptOf("broken", file), "utf8");
		latest = { id, script: compiled(brokenBy(id, text), path) };
	}
	const broken = latest.script;
	const wanted = new Set(names);
	try {
		withMutant(id, () => {
			const { tests } = prepared("whole", source, (at) => (at === path ? broken : script(at)));
			if (tests.length === 0) throw new Error("no tests are left");
			for (const { name, run } of tests) if (wanted.has(name)) run();
		});
		return false;
	} catch {
		return true;
	}
}

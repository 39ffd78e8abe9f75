import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { performance } from "node:perf_hooks";
import vm from "node:vm";
import type { Loaded } from "./collected.ts";

/** What the switches of the broken program read. */
interface Switches {
	activeMutant?: string;
	currentTestId?: string;
	hitCount?: number;
	hitLimit?: number;
	/** How often more it is noted which mutant a test comes by. */
	notesLeft: number;
	mutantCoverage?: { static: Hits; perTest: Record<string, Hits> };
}

type Hits = Record<string, number>;

const switches: Switches = { notesLeft: 0 };
(globalThis as { __stryker__?: Switches }).__stryker__ = switches;
/** A mutant met so often in one test goes round for ever. */
const MOST_HITS = 5_000_000;

/** A test file with nothing broken: how long it and each of its tests took, and the mutants they came by. */
export interface Ran {
	/** The test file, and its script. */
	readonly source: string;
	readonly script: string;
	readonly loadMs: number;
	/** Mutants it came by before its first test. */
	readonly loading: ReadonlySet<string>;
	readonly tests: readonly {
		readonly name: string;
		readonly ms: number;
		readonly mutants: ReadonlySet<string>;
	}[];
}

/** Where the broken program notes what it comes by: too slow to be done thousands of times. */
const NOTES = "var a = arguments;";
/** By then a test goes over ground it has gone over before. */
const MOST_NOTES = 500_000;

const scripts = new Map<
	string,
	(exports: object, require: NodeJS.Require, module: object) => void
>();

/** Loads a file's tests afresh, so that nothing remembered under one mutant is left for the next. */
function loaded(file: string): Loaded {
	let script = scripts.get(file);
	if (!script) {
		const source = readFileSync(file, "utf8").replaceAll(
			NOTES,
			"if (ns.notesLeft-- <= 0) return;\n		var a = arguments;",
		);
		script = vm.runInThisContext(`(function (exports, require, module) {${source}\n})`, {
			filename: file,
		});
		scripts.set(file, script as NonNullable<typeof script>);
	}
	const module = { exports: {} };
	script?.(module.exports, createRequire(file), module);
	return (globalThis as unknown as { loaded: Loaded }).loaded;
}

/**
 * Runs every test twice with nothing broken: to note the mutants it comes by, and, since noting
 * is slow, to time it. Tests that wait for something are left out: what is asked thousands of
 * times answers at once.
 *
 * @throws Error where one fails
 */
export function dryRun({ source, script }: { source: string; script: string }): Ran {
	delete switches.activeMutant;
	delete switches.currentTestId;
	const hits = { static: {}, perTest: {} as Record<string, Hits> };
	switches.mutantCoverage = hits;
	const collected = prepared(script, MOST_NOTES).tests.filter(({ name, run }) => {
		switches.currentTestId = name;
		switches.notesLeft = MOST_NOTES;
		try {
			const waits = run();
			if (waits instanceof Promise) waits.catch(() => {});
			return !(waits instanceof Promise);
		} catch (error) {
			throw new Error(`${source}: ${name} fails with nothing broken`, { cause: error });
		}
	});
	delete switches.currentTestId;
	const asked = new Set(collected.map(({ name }) => name));
	const begun = performance.now();
	const again = prepared(script, 0).tests.filter(({ name }) => asked.has(name));
	const loadMs = performance.now() - begun;
	const tests = again.map(({ name, run }) => {
		const from = performance.now();
		run();
		return {
			name,
			ms: performance.now() - from,
			mutants: new Set(Object.keys(hits.perTest[name] ?? {})),
		};
	});
	return { source, script, loadMs, loading: new Set(Object.keys(hits.static)), tests };
}

/** Loads a file's tests, and does what must be done before them. */
function prepared(script: string, notes: number): Loaded {
	switches.notesLeft = notes;
	const file = loaded(script);
	for (const prepare of file.before) prepare();
	return file;
}

/** True where one of these tests of a file fails with the mutant in place: it is killed. */
export function kills(mutant: string, file: string, names: readonly string[]): boolean {
	switches.activeMutant = mutant;
	switches.hitCount = 0;
	switches.hitLimit = MOST_HITS;
	try {
		const { tests } = prepared(file, 0);
		const wanted = new Set(names);
		if (tests.length === 0) return true;
		for (const { name, run } of tests) if (wanted.has(name)) run();
		return false;
	} catch {
		return true;
	} finally {
		delete switches.activeMutant;
	}
}

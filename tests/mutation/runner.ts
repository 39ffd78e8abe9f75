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

/** A test by its file and name, how long it took, and the mutants it came by. */
export interface Timed {
	readonly file: string;
	readonly name: string;
	readonly ms: number;
	readonly mutants: readonly string[];
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

/** Runs every test once with nothing broken. Throws where one fails. */
export function dryRun(file: string): { tests: Timed[]; loading: string[] } {
	delete switches.activeMutant;
	delete switches.currentTestId;
	switches.mutantCoverage = { static: {}, perTest: {} };
	switches.notesLeft = MOST_NOTES;
	const { tests, before } = loaded(file);
	for (const prepare of before) prepare();
	const timed = tests.map(({ name, run }) => {
		switches.currentTestId = name;
		switches.notesLeft = MOST_NOTES;
		const from = performance.now();
		try {
			run();
		} catch (error) {
			throw new Error(`${file}: ${name} fails with nothing broken`, { cause: error });
		}
		const ms = performance.now() - from;
		return { file, name, ms, mutants: Object.keys(switches.mutantCoverage?.perTest[name] ?? {}) };
	});
	delete switches.currentTestId;
	return { tests: timed, loading: Object.keys(switches.mutantCoverage?.static ?? {}) };
}

/** True where one of these tests of a file fails with the mutant in place: it is killed. */
export function kills(mutant: string, file: string, names: readonly string[]): boolean {
	switches.notesLeft = 0;
	switches.activeMutant = mutant;
	switches.hitCount = 0;
	switches.hitLimit = MOST_HITS;
	try {
		const { tests, before } = loaded(file);
		for (const prepare of before) prepare();
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

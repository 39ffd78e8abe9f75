import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import vm from "node:vm";
import type { Loaded } from "./collected.ts";

/** What the switches of the broken program read. */
interface Switches {
	activeMutant?: string;
	currentTestId?: string;
	hitCount?: number;
	hitLimit?: number;
	/** The test for which it is noted which mutants it comes by; 0 for none. */
	noting: number;
	/** The last test that came by each mutant. */
	readonly seen: number[];
	mutantCoverage?: { static: Hits; perTest: Record<string, Hits> };
}

type Hits = Record<string, number>;

const switches: Switches = { noting: 0, seen: [] };
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

/** Where the broken program notes what it comes by: too slow to be done more than once a test. */
const NOTES = "var a = arguments;";
const ONCE =
	"if (ns.noting === 0 || ns.seen[a[0]] === ns.noting) return;\nns.seen[a[0]] = ns.noting;";
let notings = 0;

const scripts = new Map<
	string,
	(exports: object, require: NodeJS.Require, module: object) => void
>();

/** Loads a file's tests afresh, so that nothing remembered under one mutant is left for the next. */
function loaded(file: string): Loaded {
	let script = scripts.get(file);
	if (!script) {
		const source = readFileSync(file, "utf8").replaceAll(NOTES, `${NOTES}\n${ONCE}`);
		script = vm.runInThisContext(`(function (exports, require, module) {${source}\n})`, {
			filename: file,
		});
		scripts.set(file, script as NonNullable<typeof script>);
	}
	const module = { exports: {} };
	script?.(module.exports, createRequire(file), module);
	return (globalThis as unknown as { loaded: Loaded }).loaded;
}

/** Slower tests are never asked, which can only let a mutant live. */
const MOST_MS_OF_TEST = 1000;

/**
 * Runs every test twice with nothing broken: to time it, and to note the mutants it comes by,
 * which is slow. Tests that wait for something are left out: what is asked thousands of times
 * answers at once.
 *
 * @throws Error where one fails
 */
export function dryRun({ source, script }: { source: string; script: string }): Ran {
	delete switches.activeMutant;
	delete switches.currentTestId;
	delete switches.mutantCoverage;
	const begun = workedMs();
	const plain = prepared(script).tests;
	const loadMs = workedMs() - begun;
	const timed = new Map(
		plain.flatMap(({ name, run }): [string, number][] => {
			const from = workedMs();
			const waits = tried(source, name, run);
			const ms = workedMs() - from;
			return waits || ms > MOST_MS_OF_TEST ? [] : [[name, ms]];
		}),
	);
	const hits = { static: {}, perTest: {} as Record<string, Hits> };
	switches.mutantCoverage = hits;
	switches.noting = ++notings;
	for (const { name, run } of prepared(script).tests) {
		if (!timed.has(name)) continue;
		switches.currentTestId = name;
		switches.noting = ++notings;
		tried(source, name, run);
	}
	switches.noting = 0;
	delete switches.currentTestId;
	const mutantsOf = (name: string) => new Set(Object.keys(hits.perTest[name] ?? {}));
	const tests = [...timed].map(([name, ms]) => ({ name, ms, mutants: mutantsOf(name) }));
	return { source, script, loadMs, loading: new Set(Object.keys(hits.static)), tests };
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
function prepared(script: string): Loaded {
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
		const { tests } = prepared(file);
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

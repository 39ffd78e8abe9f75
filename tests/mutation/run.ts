import { writeFileSync } from "node:fs";
import { cpus } from "node:os";
import { fileURLToPath } from "node:url";
import { Worker } from "node:worker_threads";
import { Chance } from "../fuzz/chance.ts";
import { bundles } from "./bundles.ts";
import { instrumented, type Mutant } from "./instrumented.ts";
import { Kept } from "./kept.ts";
import { type Fate, report } from "./report.ts";
import { dryRun, type Timed } from "./runner.ts";
import type { Task } from "./worker.ts";

/**
 * A mutant for which the tests take so much longer than without it goes round for ever, which tells.
 * Without it they were timed while noting what they come by, which alone makes them several times slower.
 */
const LONGEST_MS = 4000;
/** After so many mutants a worker makes room for a new one, whose memory is clean. */
const BATCH = 150;
const SHOWN_EVERY = 100;
const SEED = 20270301;
const WORKERS = cpus().length;
/**
 * Tests are asked until these would take so long with nothing broken; slower ones are never asked.
 * Both can only let a mutant live.
 */
const MOST_MS = 25_000;
const MOST_MS_OF_TEST = 4000;
/** Tests that come by fewer mutants are of one calculation, the others of whole plans. */
const WHOLE_PLANS = 2000;

const results = fileURLToPath(new URL("./RESULTS.md", import.meta.url));
const pattern = process.argv[2] ?? "src/core/**/*.ts";
const mutants = await instrumented(pattern);
const files = (await bundles()).map((file) => ({ file, ...dryRun(file) }));
const tests = files.reduce((sum, { tests: own }) => sum + own.length, 0);
/** The tests that come by each mutant: of one calculation, the most special first; then of whole plans, the widest first. */
const testsOf = new Map<string, Set<Timed>>();
const reach = ({ tests: own, loading }: (typeof files)[number]) =>
	new Set([...loading, ...own.flatMap(({ mutants: ids }) => ids)]).size;
const byReach = files
	.map((file) => ({ ...file, reach: reach(file) }))
	.sort((a, b) => a.reach - b.reach);
const special = byReach.filter((file) => file.reach < WHOLE_PLANS);
const whole = byReach.filter((file) => file.reach >= WHOLE_PLANS).reverse();
for (const file of [...special, ...whole])
	for (const test of file.tests)
		for (const id of new Set([...test.mutants, ...file.loading])) {
			const known = testsOf.get(id);
			if (known) known.add(test);
			else testsOf.set(id, new Set([test]));
		}
const kept = new Kept();
const fates = new Map<string, Fate>();
const tasks = [...mutants];
// Drawn at random, those tried so far stand for all, whenever a run is ended.
const chance = new Chance(SEED);
for (let at = tasks.length - 1; at > 0; at--) {
	const other = chance.below(at + 1);
	[tasks[at], tasks[other]] = [tasks[other] as Mutant, tasks[at] as Mutant];
}
process.stdout.write(`${mutants.length} mutants, ${tests} tests\n`);
await Promise.all(Array.from({ length: WORKERS }, tryTasks));
function taskOf({ id }: Mutant): Task {
	const names = new Map<string, string[]>();
	let left = MOST_MS;
	for (const { file, name, ms } of testsOf.get(id) ?? []) {
		if (ms > Math.min(MOST_MS_OF_TEST, left)) continue;
		left -= ms;
		const own = names.get(file);
		if (own) own.push(name);
		else names.set(file, [name]);
	}
	return {
		mutant: id,
		files: [...names].map(([file, own]) => ({ file, names: own })),
		ms: MOST_MS - left,
	};
}

/** Goes on with the tasks that are left, each worker with one after the other. */
async function tryTasks(): Promise<void> {
	let worker = newWorker();
	let tried = 0;
	for (let mutant = tasks.pop(); mutant; mutant = tasks.pop()) {
		const task = taskOf(mutant);
		if (task.files.length === 0 || kept.has(mutant)) {
			note(mutant, kept.has(mutant) ? "killed" : "no test");
			continue;
		}
		const fate = await fateOf(task, worker);
		note(mutant, fate);
		if (fate !== "never ends" && ++tried % BATCH !== 0) continue;
		await worker.terminate();
		worker = newWorker();
	}
	await worker.terminate();
}

function newWorker(): Worker {
	return new Worker(new URL("./worker.ts", import.meta.url));
}

function fateOf(task: Task, worker: Worker): Promise<Fate> {
	return new Promise((resolve, reject) => {
		const clock = setTimeout(() => resolve("never ends"), LONGEST_MS + task.ms);
		worker.once("error", reject);
		worker.once("message", (killed: boolean) => {
			clearTimeout(clock);
			worker.removeAllListeners("error");
			resolve(killed ? "killed" : "survived");
		});
		worker.postMessage(task);
	});
}

function note(mutant: Mutant, fate: Fate): void {
	fates.set(mutant.id, fate);
	if (fate === "killed" || fate === "never ends") kept.add(mutant);
	if (fates.size % SHOWN_EVERY !== 0 && tasks.length > 0) return;
	kept.save();
	writeFileSync(results, report(mutants, fates, tests));
	const noticed = [...fates.values()].filter((one) => one === "killed" || one === "never ends");
	process.stdout.write(`${fates.size} tried, ${noticed.length} noticed\n`);
}

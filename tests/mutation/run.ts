import { writeFileSync } from "node:fs";
import { cpus, setPriority } from "node:os";
import { fileURLToPath } from "node:url";
import { Worker } from "node:worker_threads";
import { bundles } from "./bundles.ts";
import { copy, instrumented, type Mutant } from "./instrumented.ts";
import { Kept } from "./kept.ts";
import { type Fate, report } from "./report.ts";
import { dryRun } from "./runner.ts";
import { Tasks } from "./tasks.ts";
import type { Task } from "./worker.ts";

/**
 * A mutant for which the tests take so much longer than without it goes round for ever, which
 * tells. On a machine at work they wait as well.
 */
const LONGEST_MS = 60_000;
/** After so many mutants a worker makes room for a new one, whose memory is clean. */
const BATCH = 150;
const SHOWN_EVERY = 100;
/** Others at work on the machine come first. */
const NICE = 10;

const [pattern = "src/core/**/*.ts", workers = cpus().length, ...asked] = process.argv.slice(2);
/** Asked of a part, by its own tests, the answer is no measure of all. */
const results = fileURLToPath(
	new URL(asked.length > 0 ? "../../coverage/mutants.md" : "./RESULTS.md", import.meta.url),
);
setPriority(NICE);
const mutants = await instrumented(pattern);
// What the tests read lies there too, so that nothing done to the project meanwhile tells.
process.chdir(copy);
const files = (await bundles(asked)).map(dryRun);
const tests = files.reduce((sum, { tests: own }) => sum + own.length, 0);
const tasks = new Tasks(files);
const kept = new Kept(asked);
const fates = new Map<string, Fate>();
// Drawn at random, those tried so far stand for all, whenever a run is ended.
const untried = kept.drawn(mutants);
process.stdout.write(`${mutants.length} mutants, ${tests} tests\n`);
await Promise.all(Array.from({ length: Number(workers) }, tryTasks));

/** Goes on with the mutants that are left, each worker with one after the other. */
async function tryTasks(): Promise<void> {
	let worker = newWorker();
	let tried = 0;
	for (let mutant = untried.pop(); mutant; mutant = untried.pop()) {
		const known = kept.fateOf(mutant);
		const task = tasks.of(mutant);
		if (known !== undefined || task.files.length === 0) {
			note(mutant, known ?? "no test");
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
		const clock = setTimeout(() => resolve("never ends"), LONGEST_MS + 10 * task.ms);
		// One that takes all memory there is would not have ended either.
		worker.once("error", ({ code }: NodeJS.ErrnoException) => {
			clearTimeout(clock);
			if (code === "ERR_WORKER_OUT_OF_MEMORY") resolve("never ends");
			else reject(new Error(`${task.mutant}: ${code}`));
		});
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
	kept.add(mutant, fate);
	if (fates.size % SHOWN_EVERY !== 0 && untried.length > 0) return;
	kept.save();
	writeFileSync(results, report(mutants, fates, tests));
	const noticed = [...fates.values()].filter((one) => one === "killed" || one === "never ends");
	process.stdout.write(`${fates.size} tried, ${noticed.length} noticed\n`);
}

import { writeFileSync } from "node:fs";
import { cpus } from "node:os";
import { fileURLToPath } from "node:url";
import { Worker } from "node:worker_threads";
import { bundles } from "./bundles.ts";
import { instrumented, type Mutant } from "./instrumented.ts";
import { Kept } from "./kept.ts";
import { report } from "./report.ts";
import { dryRun, type Timed } from "./runner.ts";
import type { Task } from "./worker.ts";

/**
 * A mutant for which the tests take so much longer than without it goes round for ever, which tells.
 * Without it they were timed while noting what they come by, which alone makes them several times slower.
 */
const LONGEST_MS = 4000;
/** After so many mutants a worker makes room for a new one, whose memory is clean. */
const BATCH = 150;
const WORKERS = cpus().length;
/**
 * Tests are asked in the order of how little they come by, until these would take so long with
 * nothing broken; slower ones are never asked. Both can only let a mutant live.
 */
const MOST_MS = 2500;
const MOST_MS_OF_TEST = 1000;

export type Fate = "killed" | "never ends" | "survived" | "no test";

const pattern = process.argv[2] ?? "src/core/**/*.ts";
const mutants = await instrumented(pattern);
const files = (await bundles()).map((file) => ({ file, ...dryRun(file) }));
const tests = files.reduce((sum, { tests: own }) => sum + own.length, 0);
const specificFirst = files
	.map((one) => ({ ...one, reached: new Set([...one.loading, ...one.tests.flatMap(mutantsOf)]) }))
	.sort((a, b) => a.reached.size - b.reached.size);
const kept = new Kept();
const fates = new Map<string, Fate>(
	mutants.filter((mutant) => kept.has(mutant)).map(({ id }) => [id, "killed"]),
);
const untried = mutants.filter(({ id }) => !fates.has(id));
const tasks = untried.map(taskOf).filter(({ mutant, files: asked }) => {
	if (asked.length === 0) fates.set(mutant, "no test");
	return asked.length > 0;
});
process.stdout.write(`${mutants.length} mutants, ${tests} tests\n`);
await Promise.all(Array.from({ length: WORKERS }, tryTasks));
const results = fileURLToPath(new URL("./RESULTS.md", import.meta.url));
writeFileSync(results, report(mutants, fates, tests));

function mutantsOf({ mutants: own }: Timed): readonly string[] {
	return own;
}

function taskOf({ id }: Mutant): Task {
	const asked: { file: string; names: string[]; ms: number }[] = [];
	let left = MOST_MS;
	for (const { file, tests: own, loading, reached } of specificFirst) {
		if (!reached.has(id)) continue;
		const isByLoading = loading.includes(id);
		const names: string[] = [];
		let ms = 0;
		for (const test of own) {
			if (test.ms > Math.min(MOST_MS_OF_TEST, left - ms)) continue;
			if (!isByLoading && !test.mutants.includes(id)) continue;
			names.push(test.name);
			ms += test.ms;
		}
		if (names.length === 0) continue;
		left -= ms;
		asked.push({ file, names, ms });
	}
	return { mutant: id, files: asked, ms: MOST_MS - left };
}

/** Goes on with the tasks that are left, a batch at a time in a worker of its own. */
async function tryTasks(): Promise<void> {
	while (tasks.length > 0) {
		const own = tasks.splice(0, BATCH);
		const tried = await batch(own);
		tasks.unshift(...own.slice(tried));
		for (const mutant of untried)
			if (["killed", "never ends"].includes(fates.get(mutant.id) ?? "")) kept.add(mutant);
		kept.save();
		const killed = [...fates.values()].filter(
			(fate) => fate === "killed" || fate === "never ends",
		).length;
		process.stdout.write(`${fates.size} tried, ${killed} noticed\n`);
	}
}

/** Tries a batch; says how many were tried before it ended or was ended. */
function batch(own: readonly Task[]): Promise<number> {
	return new Promise((resolve, reject) => {
		const worker = new Worker(new URL("./worker.ts", import.meta.url), { workerData: own });
		let tried = 0;
		let clock: NodeJS.Timeout | undefined;
		worker.on("message", ({ mutant, killed }: { mutant: string; killed?: boolean }) => {
			clearTimeout(clock);
			if (killed !== undefined) {
				fates.set(mutant, killed ? "killed" : "survived");
				tried++;
				return;
			}
			clock = setTimeout(
				() => {
					fates.set(mutant, "never ends");
					void worker.terminate().then(() => resolve(tried + 1));
				},
				LONGEST_MS + (own[tried]?.ms ?? 0),
			);
		});
		worker.on("error", reject);
		worker.on("exit", () => {
			clearTimeout(clock);
			resolve(tried);
		});
	});
}

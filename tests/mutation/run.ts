import { writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { Worker } from "node:worker_threads";
import { bundles } from "./bundles.ts";
import { instrumented, type Mutant } from "./instrumented.ts";
import { report } from "./report.ts";
import { dryRun, type Timed } from "./runner.ts";
import type { Task } from "./worker.ts";

/** A mutant that takes longer than this goes round for ever: the tests would not end, which tells. */
const LONGEST_MS = 20_000;
/** After so many mutants a worker makes room for a new one, whose memory is clean. */
const BATCH = 150;

export type Fate = "killed" | "never ends" | "survived" | "no test";

const pattern = process.argv[2] ?? "src/core/**/*.ts";
const mutants = await instrumented(pattern);
const files = await bundles();
const tests: Timed[] = [];
const loading = new Map<string, string[]>();
for (const file of files) {
	const found = dryRun(file);
	tests.push(...found.tests);
	for (const mutant of found.loading) loading.set(mutant, [...(loading.get(mutant) ?? []), file]);
}
const testsOf = new Map<string, Timed[]>();
for (const test of tests)
	for (const mutant of test.mutants) {
		const own = testsOf.get(mutant);
		if (own) own.push(test);
		else testsOf.set(mutant, [test]);
	}
const fates = new Map<string, Fate>();
const tasks = mutants.map(taskOf).filter(({ mutant, files }) => {
	if (files.length === 0) fates.set(mutant, "no test");
	return files.length > 0;
});
process.stdout.write(`${mutants.length} mutants, ${tests.length} tests\n`);
for (let at = 0; at < tasks.length; ) at += await batch(tasks.slice(at, at + BATCH));
const results = fileURLToPath(new URL("./RESULTS.md", import.meta.url));
writeFileSync(results, report(mutants, fates, tests.length));

function taskOf({ id }: Mutant): Task {
	const names = new Map<string, Timed[]>();
	for (const test of testsOf.get(id) ?? [])
		names.set(test.file, [...(names.get(test.file) ?? []), test]);
	const direct = [...names]
		.map(([file, own]) => ({
			file,
			names: own.map(({ name }) => name),
			ms: own.reduce((sum, { ms }) => sum + ms, 0),
		}))
		.sort((a, b) => a.ms - b.ms);
	const byLoading = (loading.get(id) ?? []).map((file) => ({ file }));
	return {
		mutant: id,
		files: [...direct.map(({ file, names: own }) => ({ file, names: own })), ...byLoading],
	};
}

/** Tries a batch in a worker of its own; says how many were tried before it ended or was ended. */
function batch(own: readonly Task[]): Promise<number> {
	return new Promise((resolve, reject) => {
		const worker = new Worker(new URL("./worker.ts", import.meta.url), { workerData: own });
		let tried = 0;
		let clock: NodeJS.Timeout | undefined;
		worker.on(
			"message",
			({ mutant, begun, killed }: { mutant: string; begun?: true; killed?: boolean }) => {
				clearTimeout(clock);
				if (!begun) {
					fates.set(mutant, killed ? "killed" : "survived");
					tried++;
					return;
				}
				clock = setTimeout(() => {
					fates.set(mutant, "never ends");
					void worker.terminate().then(() => resolve(tried + 1));
				}, LONGEST_MS);
			},
		);
		worker.on("error", reject);
		worker.on("exit", () => {
			clearTimeout(clock);
			resolve(tried);
		});
	});
}

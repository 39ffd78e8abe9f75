import { writeFileSync } from "node:fs";
import { cpus, setPriority } from "node:os";
import { fileURLToPath } from "node:url";
import { build } from "./built.ts";
import { Helper } from "./helper.ts";
import { copied, copy, instrumented, type Mutant } from "./instrumented.ts";
import { judges } from "./judges.ts";
import { Kept } from "./kept.ts";
import { type Fate, report } from "./report.ts";
import type { Ran } from "./runner.ts";
import { Tasks } from "./tasks.ts";

/**
 * A mutant for which the tests of a file take so much longer than without it goes round for ever,
 * which tells. On a machine at work they wait as well.
 */
const LONGEST_MS = 20_000;
const SHOWN_EVERY = 100;
/** Others at work on the machine come first. */
const NICE = 10;

const [pattern = "src/core/**/*.ts", workers = cpus().length, ...asked] = process.argv.slice(2);
/** Asked of a part, by its own tests, the answer is no measure of all. */
const results = fileURLToPath(
	new URL(asked.length > 0 ? "../../coverage/mutants.md" : "./RESULTS.md", import.meta.url),
);
setPriority(NICE);
copied();
const sources = judges(copy, asked.length > 0 ? asked : undefined);
await build("whole", sources);
const mutants = await instrumented(pattern);
await build("broken", sources);
process.chdir(copy);
const helpers = Array.from({ length: Number(workers) }, () => new Helper());
const files: Ran[] = [];
const unrun = [...sources];
const most = Math.max(...mutants.map(({ id }) => Number(id))) + 1;
await Promise.all(helpers.map(dryRuns));
const tests = files.reduce((sum, { tests: own }) => sum + own.length, 0);
const tasks = new Tasks(files);
const kept = new Kept(asked);
const fates = new Map<string, Fate>();
// Drawn at random, those tried so far stand for all, whenever a run is ended.
const untried = kept.drawn(mutants);
process.stdout.write(`${mutants.length} mutants, ${tests} tests\n`);
await Promise.all(helpers.map(tryMutants));

async function dryRuns(helper: Helper): Promise<void> {
	for (let source = unrun.pop(); source; source = unrun.pop()) {
		const ran = await helper.ask<Ran>({ source, mutants: most });
		if (ran === "never ends") throw new Error(`${source} takes all memory with nothing broken`);
		files.push(ran);
	}
}

/** Goes on with the mutants that are left. */
async function tryMutants(helper: Helper): Promise<void> {
	for (let mutant = untried.pop(); mutant; mutant = untried.pop())
		note(mutant, kept.fateOf(mutant) ?? (await fateOf(mutant, helper)));
	await helper.end();
}

async function fateOf(mutant: Mutant, helper: Helper): Promise<Fate> {
	const askings = tasks.of(mutant);
	for (const asking of askings) {
		const { source, names, ms } = asking;
		const question = { source, broken: mutant, names };
		const answer = await helper.ask<boolean>(question, LONGEST_MS + 10 * ms);
		if (!answer) continue;
		tasks.noticed(mutant, asking);
		return answer === true ? "killed" : answer;
	}
	return askings.length === 0 ? "no test" : "survived";
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

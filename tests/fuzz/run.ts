import { writeFileSync } from "node:fs";
import { cpus } from "node:os";
import { join } from "node:path";
import { Coverage } from "./coverage.ts";
import { type Fuzzed, fuzzed } from "./fuzzed.ts";
import { readers } from "./readers.ts";

const [cases = "1000000", seed = "20270301"] = process.argv.slice(2);
const MOST_SHOWN = 200;

const coverage = new Coverage();
const started = performance.now();
const results: (Fuzzed & { readonly seconds: number })[] = [];
for (const [reader, share] of readers) {
	const begun = performance.now();
	const result = await fuzzed(
		reader,
		Math.round((Number(cases) * share) / 1000),
		Number(seed),
		coverage,
	);
	const seconds = (performance.now() - begun) / 1000;
	console.log(
		`${reader.name}: ${result.cases} cases, ${result.finds.length} finds, ${seconds.toFixed(0)} s`,
	);
	results.push({ ...result, seconds });
}
const minutes = (performance.now() - started) / 60_000;
const finds = results.flatMap((result) => result.finds);
const total = results.reduce((sum, result) => sum + result.cases, 0);

writeFileSync(join(import.meta.dirname, "RESULTS.md"), `${report().join("\n")}\n`);
process.exitCode = finds.length === 0 ? 0 : 1;

function report(): string[] {
	return [
		"# What came of feeding the readers with damaged input",
		"",
		"Written by `npm run fuzz`. Inputs are mutations of right ones (bits, pieces, lines, encodings, line ends, quote marks, formulas, numbers at their limits); those that reach code that none before had are mutated further. What must hold of each reader stands in `tests/fuzz/readers/`. The times are of one run on a shared machine and are not a measure of speed.",
		"",
		`${total.toLocaleString("en")} cases, seed ${seed}, ${minutes.toFixed(0)} minutes, Node ${process.version}, ${cpus().length} cores (${cpus()[0]?.model ?? ""}): **${finds.length} finds**.`,
		"",
		"| Reader | Cases | Inputs kept | Code reached | Slowest case, ms | Seconds | Finds |",
		"|---|--:|--:|--:|--:|--:|--:|",
		...results.map(row),
		"",
		"Inputs kept: those that reached code that none before had, the right ones to begin with among them. Code reached: blocks of code, as the engine counts them.",
		...finds.flatMap(({ reader, what, input }) => [
			"",
			`**${reader}**: ${what}`,
			"",
			`\`${JSON.stringify(Buffer.from(input).toString("latin1").slice(0, MOST_SHOWN))}\` (${input.length} bytes)`,
		]),
	];
}

function row(result: Fuzzed & { readonly seconds: number }): string {
	const { reader, cases: done, kept, reached, slowestMs, seconds, finds: found } = result;
	const numbers = [done, kept, reached, slowestMs, seconds, found.length];
	return `| ${reader} | ${numbers.map((n) => Math.round(n).toLocaleString("en")).join(" | ")} |`;
}

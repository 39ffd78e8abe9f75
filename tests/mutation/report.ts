import { readFileSync } from "node:fs";
import { cpus } from "node:os";
import { fileURLToPath } from "node:url";
import type { Mutant } from "./instrumented.ts";

/** What became of one mutant. */
export type Fate = "killed" | "never ends" | "survived" | "no test";

/** What became of every mutant, as a page to read: the totals, then each survivor by file. */
export function report(
	all: readonly Mutant[],
	fates: ReadonlyMap<string, Fate>,
	tests: number,
): string {
	const mutants = all.filter(({ id }) => fates.has(id));
	const untried = all.length - mutants.length;
	const count = (...wanted: Fate[]) =>
		mutants.filter(({ id }) => wanted.includes(fates.get(id) as Fate)).length;
	const killed = count("killed", "never ends");
	const share = (part: number, of: number) => `${((100 * part) / of).toFixed(1)} %`;
	const left = mutants.filter(({ id }) => ["survived", "no test"].includes(fates.get(id) as Fate));
	const files = [...new Set(mutants.map(({ file }) => file))].sort();
	const rows = files.map((file) => {
		const own = mutants.filter((mutant) => mutant.file === file);
		const alive = own.filter((mutant) => left.includes(mutant)).length;
		return `| ${file} | ${own.length} | ${alive} | ${share(own.length - alive, own.length)} |`;
	});
	return [
		"# What the tests notice when src/core is broken",
		"",
		`${mutants.length} mutants (changed operators, conditions, constants, calls, emptied blocks)${untried > 0 ? `, drawn at random from ${all.length}` : ""}, ${tests} tests. Words that people read are left alone. Run with \`npm run mutate\` on ${new Date().toISOString().slice(0, 10)}, ${cpus()[0]?.model}.`,
		"",
		`| killed | never ends | survived | no test | score |`,
		`|---|---|---|---|---|`,
		`| ${count("killed")} | ${count("never ends")} | ${count("survived")} | ${count("no test")} | ${share(killed, mutants.length)} |`,
		"",
		readFileSync(fileURLToPath(new URL("./argued.md", import.meta.url)), "utf8").trim(),
		"",
		"## By file",
		"",
		"| file | mutants | alive | score |",
		"|---|---|---|---|",
		...rows,
		"",
		"## Alive",
		"",
		...left.map(
			({ id, file, line, mutator, original, replacement }) =>
				`- ${file}:${line} ${mutator} (${fates.get(id)}): \`${brief(original)}\` → \`${brief(replacement)}\``,
		),
		"",
	].join("\n");
}

const LONGEST = 80;

function brief(text: string): string {
	const line = text.replace(/\s+/g, " ").replaceAll("`", "'");
	return line.length > LONGEST ? `${line.slice(0, LONGEST)}…` : line;
}

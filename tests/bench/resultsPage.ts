import { readFileSync } from "node:fs";
import { join } from "node:path";
import { type Goal, type Measured, RESULTS, type Results, shown } from "./measure.ts";

/** All results as a page to read: what was wanted, the worst first, then each benchmark's table. */
export function resultsPage(benches: readonly string[]): string {
	const all = benches.map((name) => {
		const path = join(RESULTS, `${name}.json`);
		return { name, ...(JSON.parse(readFileSync(path, "utf8")) as Results) };
	});
	const goals = all.flatMap(({ goals: own }) => own).sort((a, b) => shortOf(b) - shortOf(a));
	return [
		"# How fast it is",
		"",
		"Written by `npm run bench`. Times are medians, in milliseconds; a peer ran in the same run.",
		"",
		"## What was wanted, the worst first",
		"",
		"| | found | wanted | |",
		"|---|--:|--:|---|",
		...goals.map(goalRow),
		"",
		readFileSync(join(import.meta.dirname, "tried.md"), "utf8").trim(),
		...all.flatMap(({ name, machine, date, rows }) => [
			"",
			`## ${name}`,
			"",
			`${machine}, ${date}.`,
			"",
			...table(rows),
		]),
		"",
	].join("\n");
}

/** How many times it misses its limit; below 1 it keeps it. */
function shortOf({ found, limit, bound }: Goal): number {
	return bound === "at most" ? found / limit : limit / found;
}

function goalRow(goal: Goal): string {
	const { what, found, unit, bound, limit } = goal;
	const kept = shortOf(goal) <= 1 ? "kept" : "**not kept**";
	return `| ${what} | ${shown(found)} ${unit} | ${bound} ${limit} | ${kept} |`;
}

function table(rows: readonly Measured[]): string[] {
	const hasPeer = rows.some(({ timesPeer }) => timesPeer !== undefined);
	const hasHeap = rows.some((row) => row.heapMb !== undefined);
	const tasks = [...new Set(rows.flatMap(({ timesFaster }) => Object.keys(timesFaster ?? {})))];
	const head = [
		"",
		"median, ms",
		"quickest, ms",
		"runs",
		...(hasPeer ? ["× peer"] : []),
		...tasks.map((task) => `× faster than ${task}`),
		...(hasHeap ? ["heap, MB"] : []),
	];
	const maybe = (value: number | undefined) => (value === undefined ? "" : shown(value));
	const lines = rows.map((row) => [
		row.what,
		shown(row.ms),
		shown(row.quickestMs),
		String(row.runs),
		...(hasPeer ? [maybe(row.timesPeer)] : []),
		...tasks.map((task) => maybe(row.timesFaster?.[task])),
		...(hasHeap ? [maybe(row.heapMb)] : []),
	]);
	const rule = head.map((_, column) => (column === 0 ? "---" : "--:"));
	return [head, rule, ...lines].map((cells) => `| ${cells.join(" | ")} |`);
}

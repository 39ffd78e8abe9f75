import { writeFileSync } from "node:fs";
import { cpus } from "node:os";
import { join } from "node:path";
import { startBrowser } from "../browser/chromium.ts";
import { siteOnStick } from "../browser/site.ts";
import { actions } from "./actions.ts";
import { type Visit, visit } from "./visit.ts";

/** How many acts, for how many minutes at most, and the seed of each page at work. */
const [acts = "10000", minutes = "600", ...seeds] = process.argv.slice(2);
/** Undo keeps every step of a visit, so the heap grows; by more than this an old laptop suffers. */
const MOST_HEAP_MB = 250;
const MOST_NODES = 60_000;

const [browser, site] = [await startBrowser(), await siteOnStick()];
const most = { acts: Number(acts), minutes: Number(minutes) };
const visits = await Promise.all(
	(seeds.length > 0 ? seeds : ["20270301"]).map((seed) => visit(browser, site, Number(seed), most)),
);
const weights = visits.flatMap((one) => one.weights);
const troubles = visits.flatMap((one) => one.troubles);
const heaviest = Math.max(...weights.map(({ heapMb }) => heapMb));
const isLight = heaviest <= MOST_HEAP_MB && weights.every(({ nodes }) => nodes <= MOST_NODES);
writeFileSync(join(import.meta.dirname, "RESULTS.md"), `${report().join("\n")}\n`);
await browser.close();
site.close();
process.exitCode = troubles.length === 0 && isLight ? 0 : 1;

function report(): string[] {
	const all = sumOf(({ acts: done }) => done);
	const differing = [...new Set(visits.flatMap((one) => one.differing))];
	return [
		"# What came of working in one page for very long",
		"",
		"Written by `npm run soak`: the built site over `file://` in Chromium, and a person who does things at random: right and wrong text in all sheets, by keyboard, in the field beside the grid and pasted; rows inserted and deleted; undo and redo; files dropped, whole and damaged, spreadsheets among them, and what the page then asks answered; whatever can be pressed, ticked, chosen or filled in under Today, Monday, What if?, Month and in the store; the workbook brought together with the one saved last; saving. Each saved file is read and planned anew and must hold the same results; at the end the saved file, opened in a fresh page, must show the same worked-out sheets. The times are of one run on a shared machine and are not a measure of speed.",
		"",
		`${all.toLocaleString("en")} acts: ${visits.map(visitWords).join("; ")}. ${browser.version()}, ${cpus().length} cores (${cpus()[0]?.model ?? ""}).`,
		"",
		`- Troubles (errors of the page or its console, requests elsewhere, text that was lost, plans that differ): **${troubles.length}**`,
		`- Files saved and planned anew: ${sumOf(({ saves }) => saves)}; worked-out sheets that a fresh page shows otherwise: ${differing.join(", ") || "none"}`,
		`- Largest heap: ${heaviest.toFixed(1)} MB (allowed ${MOST_HEAP_MB}). Undo keeps every step of a visit, so it grows with the steps.`,
		"",
		"| Seed | After acts | Minutes | Heap, MB | Nodes | Listeners |",
		"|--:|--:|--:|--:|--:|--:|",
		...visits.flatMap((one) =>
			one.weights.map(
				({ after, minutes: at, heapMb, nodes, listeners }) =>
					`| ${one.seed} | ${after} | ${at.toFixed(1)} | ${heapMb.toFixed(1)} | ${nodes} | ${listeners} |`,
			),
		),
		"",
		"What was done, each by chance, where the page has something to do it to:",
		"",
		"| Act | Times | Seconds each |",
		"|---|--:|--:|",
		...actions.map(({ name }) => {
			const times = sumOf(({ done }) => done.get(name)?.times ?? 0);
			const ms = sumOf(({ done }) => done.get(name)?.ms ?? 0);
			return `| ${name} | ${times} | ${times > 0 ? (ms / times / 1000).toFixed(2) : ""} |`;
		}),
		...troubles.map((words) => `\n- ${words}`),
	];
}

function visitWords({ seed, acts: done, minutes: taken }: Visit): string {
	return `${done.toLocaleString("en")} of seed ${seed} in ${taken.toFixed(0)} minutes`;
}

function sumOf(of: (one: Visit) => number): number {
	return visits.reduce((sum, one) => sum + of(one), 0);
}

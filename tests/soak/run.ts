import { writeFileSync } from "node:fs";
import { cpus } from "node:os";
import { join } from "node:path";
import { computedSheets } from "../../src/core/sheets/computedSheets.ts";
import { startBrowser } from "../browser/chromium.ts";
import { siteOnStick } from "../browser/site.ts";
import { Chance } from "../fuzz/chance.ts";
import { actions, nextAction } from "./actions.ts";
import { dropFiles } from "./dropFiles.ts";
import { Soak, type Weight } from "./soak.ts";

const [count = "10000", seed = "20270301", results = join(import.meta.dirname, "RESULTS.md")] =
	process.argv.slice(2);
const EVERY = 500;
/** Undo keeps every step of a visit, so the heap grows; by more than this an old laptop suffers. */
const MOST_HEAP_MB = 250;
const MOST_NODES = 60_000;
const MOST_TROUBLES = 30;

const [browser, site] = [await startBrowser(), await siteOnStick()];
const done = new Map(actions.map(({ name }) => [name, { times: 0, ms: 0 }]));
const weights: (Weight & { readonly after: number; readonly minutes: number })[] = [];
const started = performance.now();
const minutes = () => (performance.now() - started) / 60_000;

const soak = await Soak.open(browser, site, new Chance(Number(seed)));
let acts = 0;
for (let at = 0; acts < Number(count) && soak.troubles.length < MOST_TROUBLES; at++) {
	if (acts === weights.length * EVERY) await weigh(acts);
	const action = nextAction(soak.chance);
	const began = performance.now();
	const acted = await soak.step(`${at} ${action.name}`, () => action.act(soak));
	const { times, ms } = done.get(action.name) ?? { times: 0, ms: 0 };
	if (!acted) continue;
	acts++;
	done.set(action.name, { times: times + 1, ms: ms + performance.now() - began });
}
await weigh(acts);
const differing = (await soak.step("at the end", endAsFresh)) ? "none" : "some";
const heaviest = Math.max(...weights.map(({ heapMb }) => heapMb));
const isLight = heaviest <= MOST_HEAP_MB && weights.every(({ nodes }) => nodes <= MOST_NODES);
writeFileSync(results, `${report().join("\n")}\n`);
await browser.close();
site.close();
process.exitCode = soak.troubles.length === 0 && isLight ? 0 : 1;

async function weigh(after: number): Promise<void> {
	weights.push({ after, minutes: minutes(), ...(await soak.weigh()) });
	const { heapMb, nodes, listeners } = weights.at(-1) as Weight;
	console.log(
		`${after}: ${heapMb.toFixed(1)} MB, ${nodes} nodes, ${listeners} listeners, ${soak.troubles.length} troubles`,
	);
}

/** Saved, and opened in a page that has seen nothing of all this, every worked-out sheet is the same. */
async function endAsFresh(): Promise<boolean> {
	await soak.save();
	const files = computedSheets.map(({ file }) => file).filter((file) => soak.sheets.includes(file));
	const shown = await soak.shown(files);
	const fresh = await Soak.open(browser, site, soak.chance);
	await fresh.page.keyboard.press("Escape");
	await dropFiles(fresh.page, [{ name: "saved.zip", bytes: soak.saved ?? new Uint8Array() }]);
	const anew = await fresh.shown(files);
	const other = files.filter((file) => JSON.stringify(shown[file]) !== JSON.stringify(anew[file]));
	for (const file of other) soak.trouble(`${file} is shown otherwise in a fresh page`);
	return other.length === 0;
}

function report(): string[] {
	return [
		"# What came of working in one page for very long",
		"",
		"Written by `npm run soak`: the built site over `file://` in Chromium, and a person who does things at random: right and wrong text in all sheets, by keyboard, in the field beside the grid and pasted; rows inserted and deleted; undo and redo; files dropped, whole and damaged, spreadsheets among them; whatever can be pressed, ticked, chosen or filled in under Today, Monday, What if?, Month and in the store; the workbook brought together with the one saved last; saving. Each saved file is read and planned anew and must hold the same results; at the end the saved file, opened in a fresh page, must show the same worked-out sheets. The times are of one run on a shared machine and are not a measure of speed.",
		"",
		`${acts.toLocaleString("en")} acts, seed ${seed}, ${minutes().toFixed(0)} minutes, ${browser.version()}, ${cpus().length} cores (${cpus()[0]?.model ?? ""}).`,
		"",
		`- Troubles (errors of the page or its console, requests elsewhere, text that was lost, plans that differ): **${soak.troubles.length}**`,
		`- Files saved and planned anew: ${soak.saves}; worked-out sheets that a fresh page shows otherwise: ${differing}`,
		`- Largest heap: ${heaviest.toFixed(1)} MB (allowed ${MOST_HEAP_MB}). Undo keeps every step of a visit, so it grows with the steps.`,
		"",
		"| After acts | Minutes | Heap, MB | Nodes | Listeners |",
		"|--:|--:|--:|--:|--:|",
		...weights.map(
			({ after, minutes: at, heapMb, nodes, listeners }) =>
				`| ${after} | ${at.toFixed(1)} | ${heapMb.toFixed(1)} | ${nodes} | ${listeners} |`,
		),
		"",
		"What was done, each by chance, where the page has something to do it to:",
		"",
		"| Action | Times | Seconds each |",
		"|---|--:|--:|",
		...[...done].map(
			([name, { times, ms }]) =>
				`| ${name} | ${times} | ${times > 0 ? (ms / times / 1000).toFixed(2) : ""} |`,
		),
		...soak.troubles.map((words) => `\n- ${words}`),
	];
}

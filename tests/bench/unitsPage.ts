import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { CDPSession } from "playwright-core";
import { zipTexts } from "../../src/io/zipWorkbook.ts";
import { startBrowser } from "../browser/chromium.ts";
import { siteOnStick } from "../browser/site.ts";
import { WorkbookPage } from "../browser/workbookPage.ts";
import { inventedUnit } from "../district/inventedUnit.ts";
import { dropFromDisk } from "./dropFromDisk.ts";
import { type Goal, type Measured, report, summary } from "./measure.ts";
import { slowDown } from "./pageTimes.ts";
import { type Tasks, tasksWhile } from "./tasksWhile.ts";
import { keyMs, noteKeys } from "./unitsKeys.ts";

/**
 * The page *Several units* over file:// while it reads a district: workbooks of the sample's
 * size, dropped from the disk. The longest task of the page's own thread, by the clock and by
 * the time its processor gave to it, which other programs do not lengthen; how long a key
 * takes to be painted meanwhile; and what is held of a unit when all are read.
 *
 *   npm run bench unitsPage             # 2,000 units
 *   UNITS=300 npm run bench unitsPage   # fewer, to try
 */
const UNITS = Number(process.env.UNITS ?? 2000);
/**
 * How much slower, how many of them, and how many are read before anything is noted, so that
 * what every unit shares is there: scripts, and the caches of counts.
 */
const RUNS = [
	{ times: 1, units: UNITS, before: Math.ceil(UNITS / 4) },
	{ times: 4, units: Math.ceil(UNITS / 8), before: Math.ceil(UNITS / 20) },
];
const LONGEST_MS = 100;
const HELD_KB = 20;
const KEY_EVERY_MS = 700;

const place = mkdtempSync(join(tmpdir(), "district page "));
const [browser, site] = [await startBrowser(), await siteOnStick()];
const rows: Measured[] = [];
const goals: Goal[] = [];
try {
	const zips = Array.from({ length: UNITS }, (_, seed) => {
		const path = join(place, `unit-${seed}.zip`);
		writeFileSync(path, zipTexts(inventedUnit(seed)));
		return path;
	});
	for (const { times, units, before } of RUNS)
		await measureAt(times, zips.slice(0, before), zips.slice(before, units));
	report("unitsPage", rows, goals);
} finally {
	await browser.close();
	site.close();
	rmSync(place, { recursive: true, force: true });
}

async function measureAt(
	times: number,
	before: readonly string[],
	zips: readonly string[],
): Promise<void> {
	const workbook = await WorkbookPage.open(browser, site, {}, "several-units", noteKeys);
	const { page } = workbook;
	const tools = await workbook.context.newCDPSession(page);
	await slowDown(workbook, times);
	await dropFromDisk(workbook, before);
	await untilRead(workbook, async () => undefined);
	const heldBefore = await heapMb(tools);
	const keys: number[] = [];
	const heaps: number[] = [];
	const began = performance.now();
	const tasks = await tasksWhile(browser, page, async () => {
		await dropFromDisk(workbook, zips);
		await untilRead(workbook, async () => {
			keys.push(await keyMs(workbook, page.getByLabel("Search units")));
			const { usedSize } = await tools.send("Runtime.getHeapUsage");
			heaps.push(usedSize / 1e6);
		});
	});
	const ms = performance.now() - began;
	const held = await heapMb(tools);
	const read = zips.length;
	note(`${read} units, ${times} × slower`, ms, read, { tasks, keys, heaps });
	const kbEach = ((held - heldBefore) * 1000) / read;
	if (times === 1)
		goals.push({
			what: "Several units on the page: held of each",
			found: kbEach,
			unit: "kB",
			bound: "at most",
			limit: HELD_KB,
		});
	await workbook.close();
}

interface Noted {
	readonly tasks: Tasks;
	readonly keys: readonly number[];
	readonly heaps: readonly number[];
}

function note(name: string, ms: number, read: number, { tasks, keys, heaps }: Noted): void {
	const heapMb = Math.max(...heaps);
	const once = { quickestMs: ms, runs: 1, heapMb };
	rows.push({ what: `${name}: ${((read * 1000) / ms).toFixed(1)} a second`, ms, ...once });
	rows.push(summary(`${name}: key → painted while it reads`, keys));
	rows.push(summary(`${name}: a task of a millisecond or more, processor time`, tasks.cpuMs));
	const longest = Math.max(...tasks.ms);
	rows.push(summary(`${name}: the longest task, by the clock`, [longest]));
	goals.push({
		what: `Several units, ${name}: longest task, processor time`,
		found: Math.max(...tasks.cpuMs),
		unit: "ms",
		bound: "at most",
		limit: LONGEST_MS,
	});
}

/** Does something again and again until the page has read all. */
async function untilRead({ page }: WorkbookPage, meanwhile: () => Promise<void>): Promise<void> {
	const bar = page.locator(".progress progress");
	await bar.waitFor();
	while (await bar.isVisible()) {
		await meanwhile();
		await new Promise((next) => setTimeout(next, KEY_EVERY_MS));
	}
}

/** What the page holds when nothing that was let go is left. */
async function heapMb(tools: CDPSession): Promise<number> {
	for (let times = 0; times < 3; times++) await tools.send("HeapProfiler.collectGarbage");
	return (await tools.send("Runtime.getHeapUsage")).usedSize / 1e6;
}

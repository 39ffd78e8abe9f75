import { startBrowser } from "../browser/chromium.ts";
import { dropDemo } from "../browser/droppedDemo.ts";
import { siteOnStick } from "../browser/site.ts";
import { WorkbookPage } from "../browser/workbookPage.ts";
import { type Goal, type Measured, report, summary } from "./measure.ts";
import { markWaits, openWait, searchWait, type Wait } from "./openTimes.ts";
import { slowDown } from "./pageTimes.ts";
import { yearChanges } from "./yearWorkbook.ts";

/**
 * Sheets of a year's workbook that take long, each first opened on a page of its own over
 * file:// with the processor slowed down: from the click in the rail until its cells are
 * painted. And a search over all sheets, of which most were never looked at.
 */
const SLOWER = [1, 4];
const OPENINGS = 5;
const LIMIT_AT = 4;
const SHEETS = { "water.csv": "Water to fetch", "levers.csv": "What would help" };
const OPENED_MS = 200;
const SEARCHED_MS = 1000;

const [browser, site] = [await startBrowser(), await siteOnStick()];
const rows: Measured[] = [];
const goals: Goal[] = [];
for (const times of SLOWER) {
	for (const [file, title] of Object.entries(SHEETS))
		await note(`${title}, opened`, times, OPENED_MS, (page) => openWait(browser, page, file));
	await note("Search over all sheets", times, SEARCHED_MS, (page) =>
		searchWait(browser, page, "2027"),
	);
}
await browser.close();
site.close();
report("sheetsOpened", rows, goals);

async function note(
	name: string,
	times: number,
	limit: number,
	waitOn: (workbook: WorkbookPage) => Promise<Wait>,
): Promise<void> {
	const waits: Wait[] = [];
	for (let run = 0; run < OPENINGS; run++) waits.push(await onFreshPage(times, waitOn));
	const what = `year, ${times} × slower: ${name}`;
	const cpu = summary(
		`${what}, processor time`,
		waits.map(({ cpuMs }) => cpuMs),
	);
	rows.push(
		summary(
			what,
			waits.map(({ ms }) => ms),
		),
		cpu,
	);
	if (times === LIMIT_AT)
		goals.push({ what: cpu.what, found: cpu.ms, unit: "ms", bound: "at most", limit });
}

/** What a wait takes on a page that has shown nothing of the workbook but its first screen. */
async function onFreshPage(
	times: number,
	waitOn: (workbook: WorkbookPage) => Promise<Wait>,
): Promise<Wait> {
	const workbook = await WorkbookPage.open(browser, site, {}, "this-week", markWaits);
	workbook.page.setDefaultTimeout(60_000);
	await dropDemo(workbook, yearChanges);
	await workbook.drawn();
	await workbook.page.waitForLoadState("networkidle");
	await slowDown(workbook, times);
	const wait = await waitOn(workbook);
	await workbook.close();
	return wait;
}

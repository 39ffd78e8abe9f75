import { folderOf, languages } from "../../src/messages/languages.ts";
import { startBrowser } from "../browser/chromium.ts";
import { dropDemo } from "../browser/droppedDemo.ts";
import { builtSite, siteOnStick } from "../browser/site.ts";
import { type Goal, type Measured, report, summary } from "./measure.ts";
import { pageBytes } from "./pageBytes.ts";
import { draftMs, openNoting, paintedMs, readyMs, selectDay, slowDown } from "./pageTimes.ts";
import { yearChanges } from "./yearWorkbook.ts";

/**
 * The built site over file:// in a browser whose processor is slowed down: from the call of
 * the page to a grid that can be typed into, and from Enter to the new results on the screen,
 * for the demo's week and for a year's workbook.
 */
const SLOWER = [1, 4, 6];
const OPENINGS = 5;
const EDITS = 11;
const LIMIT_AT = 4;
const PAINTED_MS = { demo: 50, year: 100 };
const READY_MS = { demo: 700, year: 1000 };
const COMPRESSED_KB = 350;

const [browser, site] = [await startBrowser(), await siteOnStick()];
const rows: Measured[] = [];
const goals: Goal[] = [];
for (const book of ["demo", "year"] as const)
	for (const times of SLOWER) {
		const workbook = await openNoting(browser, site);
		workbook.page.setDefaultTimeout(60_000);
		const isYear = book === "year";
		if (isYear) await dropDemo(workbook, yearChanges);
		await slowDown(workbook, times);
		const name = `${book}, ${times} × slower`;
		const open = isYear ? draftMs : readyMs;
		const opened = await runs(OPENINGS, () => open(workbook));
		await selectDay(workbook);
		const painted = await runs(EDITS, (run) => paintedMs(workbook, 20 + (run % 2) * 20));
		const ready = summary(`${name}: ${isYear ? "draft → ready" : "open → ready"}`, opened);
		const edit = summary(`${name}: edit → painted`, painted);
		rows.push(ready, edit);
		if (times === LIMIT_AT)
			goals.push(atMost(ready, READY_MS[book]), atMost(edit, PAINTED_MS[book]));
		await workbook.close();
	}
const english = new Intl.DisplayNames("en", { type: "language" });
for (const { code } of languages) {
	const { compressed } = pageBytes(`${builtSite()}/${folderOf(code)}index.html`);
	const what = `Workbook page${folderOf(code) && ` in ${english.of(code)}`}, compressed`;
	goals.push({
		what,
		found: compressed / 1000,
		unit: "kB",
		bound: "at most",
		limit: COMPRESSED_KB,
	});
}
await browser.close();
site.close();
report("page", rows, goals);

/** Times of so many runs, one of them to warm up. */
async function runs(count: number, work: (run: number) => Promise<number>): Promise<number[]> {
	const times: number[] = [];
	for (let run = 0; run <= count; run++) times.push(await work(run));
	return times.slice(1);
}

function atMost({ what, ms }: Measured, limit: number): Goal {
	return { what, found: ms, unit: "ms", bound: "at most", limit };
}

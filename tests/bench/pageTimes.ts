import type { Browser, BrowserContext, Page } from "playwright-core";
import type { Site } from "../browser/site.ts";
import { WorkbookPage } from "../browser/workbookPage.ts";

/** What the page under measurement notes about itself. */
interface Notes {
	/** From the call of the page to the end of the first frame with a grid's cells in it, in ms. */
	ready: number | undefined;
	/** From each Enter, or click on "go on with the draft", to the end of the frame that shows other results, in ms. */
	readonly painted: number[];
	/** Told of each of these. */
	heard: () => void;
}

declare global {
	var notes: Notes;
}

/** The plan's page in a new browser profile, which notes when it can be typed into, and when an edit was painted. */
export async function openNoting(browser: Browser, site: Site): Promise<WorkbookPage> {
	return WorkbookPage.open(browser, site, {}, "this-week", takeNotes);
}

async function takeNotes(context: BrowserContext): Promise<void> {
	await context.addInitScript(() => {
		globalThis.notes = { ready: undefined, painted: [], heard: () => undefined };
		/** Kits to reprocess on the third day, whose births are typed: little to look at, so that looking costs little. */
		const results = () =>
			document.querySelector("#sheet .grid .ht_master tbody tr:nth-child(2) td:nth-child(4)")
				?.textContent ?? "";
		const whenOther = (before: string, note: () => void) => {
			const look = () => {
				if (results() === before) return requestAnimationFrame(look);
				// What is posted in a frame is read after that frame has been painted.
				const { port1, port2 } = new MessageChannel();
				port1.onmessage = note;
				return port2.postMessage(undefined);
			};
			requestAnimationFrame(look);
		};
		whenOther("", () => {
			notes.ready = performance.now();
			notes.heard();
		});
		const noteFrom = ({ timeStamp }: Event) =>
			whenOther(results(), () => {
				notes.painted.push(performance.now() - timeStamp);
				notes.heard();
			});
		addEventListener("keydown", (event) => event.key === "Enter" && noteFrom(event), true);
		addEventListener(
			"click",
			(event) => (event.target as Element).closest("#opening .main") && noteFrom(event),
			true,
		);
	});
}

/** Calls the page anew. @returns ms until its grid can be typed into */
export async function readyMs({ page }: WorkbookPage): Promise<number> {
	await page.reload();
	return noted(page, "ready");
}

/** Calls the page anew and goes on with the draft it offers. @returns ms from the click to its results */
export async function draftMs({ page }: WorkbookPage): Promise<number> {
	await page.reload();
	await page.locator("#opening button.main").click();
	return noted(page, 0);
}

/** Selects the day whose births are typed. */
export function selectDay(workbook: WorkbookPage): Promise<void> {
	return workbook.click(0, 3);
}

/** Types other births for the selected day. @returns ms from Enter to new results on the screen */
export async function paintedMs({ page }: WorkbookPage, births: number): Promise<number> {
	const done = await page.evaluate(() => notes.painted.length);
	await page.keyboard.type(String(births));
	await page.keyboard.press("Enter");
	const ms = await noted(page, done);
	// Back by key: a second click on the cell would soon open it with the text that stands there.
	await page.keyboard.press("ArrowUp");
	return ms;
}

/** Waits in the page itself, which asking it again and again would slow down. */
function noted(page: Page, what: "ready" | number): Promise<number> {
	return page.evaluate(
		(wanted) =>
			new Promise<number>((found) => {
				notes.heard = () => {
					const ms = wanted === "ready" ? notes.ready : notes.painted[wanted];
					if (ms !== undefined) found(ms);
				};
				notes.heard();
			}),
		what,
	);
}

/** Slows the page's processor down by so many times, until told otherwise. */
export async function slowDown({ page, context }: WorkbookPage, times: number): Promise<void> {
	const tools = await context.newCDPSession(page);
	await tools.send("Emulation.setCPUThrottlingRate", { rate: times });
}

import type { Browser, BrowserContext } from "playwright-core";
import type { WorkbookPage } from "../browser/workbookPage.ts";
import { traced } from "./traced.ts";

/** What a wait took: by the clock, and what the processor gave to it, another program's share left out. */
export interface Wait {
	readonly ms: number;
	readonly cpuMs: number;
}

declare global {
	/** Marks that something was asked, and when what it waits for has been painted; then it is over. */
	var waitFor: (isThere: () => boolean) => Promise<void>;
}

const ASKED = "asked";
const PAINTED = "painted";

/** Teaches the page to mark when something was asked, and when the answer was painted. */
export async function markWaits(context: BrowserContext): Promise<void> {
	await context.addInitScript(
		([asked, painted]) => {
			globalThis.waitFor = (isThere) => {
				performance.mark(asked);
				return new Promise((over) => {
					const look = () => {
						if (!isThere()) return requestAnimationFrame(look);
						// What is posted in a frame is read after that frame has been painted.
						const { port1, port2 } = new MessageChannel();
						port1.onmessage = () => {
							performance.mark(painted);
							over();
						};
						return port2.postMessage(undefined);
					};
					requestAnimationFrame(look);
				});
			};
		},
		[ASKED, PAINTED] as const,
	);
}

/** Follows the rail's link to a sheet. @returns what it takes until its cells are painted */
export function openWait(browser: Browser, workbook: WorkbookPage, file: string): Promise<Wait> {
	return wait(browser, workbook, () =>
		workbook.page.evaluate((sheet) => {
			const link = document.querySelector<HTMLElement>(`a[data-sheet="${sheet}"]`);
			const over = waitFor(
				() =>
					link?.getAttribute("aria-current") === "page" &&
					(document.querySelector("#sheet .grid .ht_master tbody tr")?.textContent ?? "") !== "",
			);
			link?.click();
			return over;
		}, file),
	);
}

/** Looks for a text in the sheets that nobody has looked at yet. @returns what it takes until all is found */
export async function searchWait(
	browser: Browser,
	workbook: WorkbookPage,
	words: string,
): Promise<Wait> {
	const { page } = workbook;
	await page.keyboard.press("Control+k");
	await page.keyboard.type(words);
	const these = page.getByRole("button", { name: "Search these too" });
	await these.waitFor();
	return wait(browser, workbook, () =>
		page.evaluate(() => {
			const dialog = document.querySelector("dialog.find");
			const status = dialog?.querySelector("[role=status]");
			const over = waitFor(() => /^\d+ places? found|^Nothing/.test(status?.textContent ?? ""));
			const buttons = [...(dialog?.querySelectorAll("button") ?? [])];
			buttons.find(({ textContent }) => textContent === "Search these too")?.click();
			return over;
		}),
	);
}

async function wait(
	browser: Browser,
	{ page }: WorkbookPage,
	work: () => Promise<void>,
): Promise<Wait> {
	const { tasks, marks } = await traced(browser, page, work);
	const [from, to] = [marks[ASKED], marks[PAINTED]];
	if (from === undefined || to === undefined) throw new Error("the page marked no wait");
	const between = tasks.filter(({ startMs, ms }) => startMs + ms > from && startMs < to);
	return { ms: to - from, cpuMs: between.reduce((sum, { cpuMs }) => sum + cpuMs, 0) };
}

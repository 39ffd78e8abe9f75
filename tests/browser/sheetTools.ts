import type { WorkbookPage } from "./workbookPage.ts";

/** What waits for a pause in typing, or works sheets out, takes a moment on a busy machine. */
export const SOON = { timeout: 10_000 };

interface Wanted {
	readonly by?: string;
	readonly order?: string;
	readonly contains?: string;
}

/** Sorts and filters the sheet on the screen with the fields over its grid. */
export async function arrange(
	{ page }: WorkbookPage,
	{ by, order, contains }: Wanted,
): Promise<void> {
	const button = page.getByRole("button", { name: "Sort and filter" });
	if ((await button.getAttribute("aria-expanded")) === "false") await button.click();
	if (by) await page.getByLabel("Sort by").selectOption(by);
	if (order) await page.getByLabel("Direction").selectOption(order);
	if (contains) await page.getByLabel("contains").fill(contains);
}

/** What the line under the tools says. */
export async function status({ page }: WorkbookPage): Promise<string> {
	return (await page.locator(".shown-rows").textContent()) ?? "";
}

/** The line numbers of the file, as they stand beside the rows. */
export async function lines(workbook: WorkbookPage): Promise<string[]> {
	await workbook.drawn();
	return workbook.page.locator(".as-table tbody .line-name").allTextContents();
}

/** The selected cell as a screen reader says it. */
export async function spoken({ page }: WorkbookPage): Promise<string> {
	return (await page.locator(".desk .grid").getAttribute("aria-label")) ?? "";
}

export function focusIn({ page }: WorkbookPage, place: string): Promise<boolean> {
	return page.evaluate((part) => document.activeElement?.closest(part) !== null, place);
}

import { describe, expect, test } from "vitest";
import { axeViolations } from "./axeViolations.ts";
import { closeClean, openChanged } from "./changedDemo.ts";
import { browser, served as site } from "./fixture.ts";
import { WorkbookPage } from "./workbookPage.ts";

/** Births of the demo's register times two from a day on. */
const doubledFrom = (day: string) => (text: string) =>
	text.replace(/^(\d{4}-\d{2}-\d{2}),(\d+)/gm, (all, date: string, births: string) =>
		date >= day ? `${date},${2 * Number(births)}` : all,
	);

describe("on the safe side, and said", { timeout: 60_000 }, () => {
	test("what is far safer than asked unfolds under the plan, and stays open when the plan is made anew", async () => {
		const workbook = await WorkbookPage.open(browser, site);
		const { page } = workbook;
		const part = page.locator(".far-safer");
		await part.locator("summary").focus();
		await page.keyboard.press("Enter");
		const lines = part.locator("li");
		await expect.poll(() => lines.count()).toBeGreaterThan(2);
		await expect
			.poll(() => lines.first().textContent())
			.toMatch(/^Vinegar, each day: Prepare for 1 L, average 0\.1/);
		expect(await axeViolations(workbook)).toEqual([]);
		await workbook.type(0, 1, "9");
		await expect.poll(() => lines.count()).toBeGreaterThan(2);
		await part.getByRole("link").click();
		await page.locator(`a[data-sheet="how-safe.csv"][aria-current=page]`).waitFor();
		await closeClean(workbook);
	});

	test("a change of births: before and after first, then the register starts there, and Undo takes it back", async () => {
		const workbook = await openChanged(browser, site, "forecast.csv", {
			"records.csv": doubledFrom("2027-02-08"),
		});
		const { page } = workbook;
		const part = page.locator(".register-start");
		await part.locator("table").waitFor();
		const start = part.getByRole("button", { name: /^Learn births from/ });
		expect(await start.isVisible()).toBe(false);
		await part.getByText("The cause is known, and it lasts").click();
		await start.click();
		const back = part.getByRole("button", { name: "Learn from the whole register again" });
		await back.waitFor();
		expect(await axeViolations(workbook)).toEqual([]);
		await page.getByRole("button", { name: "Undo" }).click();
		await part.locator("table").waitFor();
		await expect.poll(() => back.count()).toBe(0);
		await closeClean(workbook);
	});
});

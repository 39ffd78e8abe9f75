import { describe, expect, test } from "vitest";
import { acidBesideChlorine } from "./acidBesideChlorine.ts";
import { dropDemo } from "./droppedDemo.ts";
import { browser, served as site } from "./fixture.ts";
import { WorkbookPage } from "./workbookPage.ts";

describe("acid and chlorine", { timeout: 120_000 }, () => {
	const ACID = "<p>Pour 1 L of vinegar into 1 L of water.</p>";
	const CHLORINE = "<p>Put 800 mL of bleach into 4 L of water.</p>";
	test.each([
		["acid, then chlorine", ACID + CHLORINE, 1],
		["chlorine, then acid, with other words between", `${CHLORINE}<p>Wash.</p>${ACID}`, 1],
		["both in one", "<p>Mix the bleach and the vinegar.</p>", 1],
		["a caution between", `${ACID}<p>Never with chlorine.</p>${CHLORINE}`, 0],
		["only chlorine", CHLORINE + CHLORINE, 0],
	])("the walk itself: %s", async (_what, html, faults) => {
		const page = await browser.newPage();
		await page.setContent(html);
		expect(await acidBesideChlorine(page, "body")).toHaveLength(faults);
		await page.close();
	});

	// A descaling in every round, so that whatever speaks of vinegar does speak of it.
	test("no page and no print-out has the one beside the other without the caution between", async () => {
		const workbook = await WorkbookPage.open(browser, site, { bypassCSP: true });
		const { page } = workbook;
		await page.evaluate(() => {
			window.print = () => {};
		});
		await dropDemo(workbook, { settings: { descale_every_rounds: "1" } });
		let printOuts = 0;
		for (const sheet of await workbook.sheets()) {
			await workbook.goTo(sheet);
			expect(await acidBesideChlorine(page, "#sheet"), sheet).toEqual([]);
			// Monday's buttons lead to the pages that print, which are walked themselves.
			if (sheet === "monday") continue;
			const buttons = page.getByRole("button", { name: /^Print/, disabled: false });
			const names = await buttons.allTextContents();
			for (const [at, name] of names.entries()) {
				await buttons.nth(at).click();
				expect(await acidBesideChlorine(page, "#paper"), `${sheet}: ${name}`).toEqual([]);
				printOuts += await page.locator("#paper > *").count();
				await page.evaluate(() => window.dispatchEvent(new Event("afterprint")));
			}
		}
		expect(printOuts).toBeGreaterThan(5);
		for (const name of ["guide.html", "methods.html", "sources.html"]) {
			await page.goto(site.address + name);
			expect(await acidBesideChlorine(page, "body"), name).toEqual([]);
		}
		await workbook.close();
	});
});

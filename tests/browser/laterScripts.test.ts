import { describe, expect, test } from "vitest";
import { browser, onStick, served } from "./fixture.ts";
import { WorkbookPage } from "./workbookPage.ts";

/** Each time that the page is opened takes part of a second, and the script is asked for two or three times. */
const A_WHILE = { timeout: 20_000 };
const PICTURE = /Times no kit is ready when needed, by number of kits/;

describe.each([
	["served", served],
	["on a memory stick", onStick],
] as const)("what comes in further scripts, %s", (_, site) => {
	test("pictures are drawn as soon as their script is there, and their script comes once", async () => {
		const workbook = await WorkbookPage.open(browser, site, {}, "kit-cover.csv");
		await workbook.page.locator("svg", { has: workbook.page.locator(".cover-line") }).waitFor();
		await expect.poll(() => workbook.page.getByRole("img", { name: PICTURE }).count()).toBe(1);
		await workbook.goTo("strength.csv");
		await workbook.page.getByRole("img", { name: /Strength left in every lot/ }).waitFor();
		const scripts = await workbook.page
			.locator("script")
			.evaluateAll((all) => all.map((script) => script.getAttribute("src")));
		expect(scripts.filter((src) => src === "./pictures.js")).toHaveLength(1);
		expect(workbook.errors).toEqual([]);
		await workbook.close();
	});

	test("a script that does not come leaves the sheet as it is and a word, and is asked for again", async () => {
		const workbook = await WorkbookPage.open(
			browser,
			site,
			{},
			"kit-cover.csv",
			async (context) => {
				await context.route(/pictures\.js$/, (route) => route.abort(), { times: 2 });
			},
		);
		await workbook.page.getByText("This picture could not be loaded").waitFor();
		expect((await workbook.row("4"))[2]).toBe("yes");
		await expect
			.poll(async () => {
				await workbook.goTo("this-week");
				await workbook.goTo("kit-cover.csv");
				return workbook.page.getByRole("img", { name: PICTURE }).count();
			}, A_WHILE)
			.toBe(1);
		await workbook.close();
	});

	test("a page whose script does not come leaves the page before, says so, and opens when its link is clicked again", async () => {
		let comes = false;
		const workbook = await WorkbookPage.open(browser, site, {}, "this-week", async (context) => {
			await context.route(/onPages\.js$/, (route) => (comes ? route.continue() : route.abort()));
		});
		const title = workbook.page.locator("#sheet h1");
		const link = workbook.page.locator('#rail a[href="#mixing.csv"]');
		const plan = await title.textContent();
		await workbook.page.evaluate(() => {
			location.hash = "#mixing.csv";
		});
		await workbook.page.getByText("This page could not be loaded").waitFor();
		await expect.poll(() => title.textContent()).toBe(plan);
		comes = true;
		await expect
			.poll(async () => {
				// The same link, without going elsewhere first.
				await link.dispatchEvent("click");
				return workbook.page.getByText("Product into water, never water onto product.").count();
			}, A_WHILE)
			.toBe(1);
		await workbook.close();
	});
});

import { describe, expect, test } from "vitest";
import { drop } from "./drop.ts";
import { browser, onStick, served } from "./fixture.ts";
import { WorkbookPage, withoutFilePickers } from "./workbookPage.ts";

/** Each time that the page is opened takes part of a second, and the script is asked for two or three times. */
const A_WHILE = { timeout: 20_000 };
const ROUNDS = { name: "rounds.csv", text: "start,label\n05:30,early\n" };
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

	test("a file that is dropped before what reads it is there waits for it", async () => {
		let come = () => {};
		const coming = new Promise<void>((there) => {
			come = there;
		});
		const workbook = await WorkbookPage.open(browser, site, {}, "rounds.csv", async (context) => {
			await context.addInitScript(() => {
				window.requestIdleCallback = () => 0;
			});
			await context.route(/readers\.js$/, (route) => coming.then(() => route.continue()));
		});
		const before = await workbook.table();
		await drop(workbook, [ROUNDS]);
		await workbook.page.locator('script[src="./readers.js"]').waitFor({ state: "attached" });
		expect(await workbook.table()).toEqual(before);
		come();
		await workbook.page.getByText("Replaced: Rounds of reprocessing. The other sheets").waitFor();
		expect(await workbook.row("05:30")).toContain("early");
		expect(workbook.errors).toEqual([]);
		await workbook.close();
	});

	test("where what reads files does not come nothing is opened, a word says so, and it is asked for again", async () => {
		let comes = false;
		const workbook = await WorkbookPage.open(browser, site, {}, "rounds.csv", async (context) => {
			await withoutFilePickers(context);
			await context.route(/readers\.js$/, (route) => (comes ? route.continue() : route.abort()));
		});
		const { page } = workbook;
		const before = await workbook.table();
		const open = async () => {
			const chooser = page.waitForEvent("filechooser");
			await page.locator("#open-files").focus();
			await page.keyboard.press("Enter");
			const buffer = Buffer.from(ROUNDS.text);
			await (await chooser).setFiles({ name: ROUNDS.name, mimeType: "text/csv", buffer });
		};
		await open();
		const dialog = page.getByRole("dialog", { name: "Nothing was opened" });
		await dialog.getByText("The part of the program that reads files could not be").waitFor();
		expect(await workbook.table()).toEqual(before);
		await page.keyboard.press("Enter");
		await dialog.waitFor({ state: "detached" });
		comes = true;
		await expect
			.poll(async () => {
				await open();
				await page.getByText(/Nothing was opened|Replaced: Rounds of/).waitFor();
				await page.keyboard.press("Escape");
				return page.getByText("Replaced: Rounds of reprocessing").count();
			}, A_WHILE)
			.toBe(1);
		expect(await workbook.row("05:30")).toContain("early");
		await workbook.close();
	});
});

import { expect, test } from "vitest";
import { open, phone } from "./atBench.ts";
import { axeViolations } from "./axeViolations.ts";
import { readPdf } from "./paper.ts";
import type { WorkbookPage } from "./workbookPage.ts";

test("by the clock: the stove of the evening before, what is late, what runs, and a day of one's own", {
	timeout: 60_000,
}, async () => {
	const evening = await open({}, "today", "2027-02-28T19:00:00");
	const acts = (workbook: WorkbookPage) => workbook.page.locator(".act").allTextContents();
	expect((await acts(evening))[0]).toMatch(
		/^22:56 at the latestLight the stove for Morning, Mon 1 Mar/,
	);
	await evening.page.locator("#today-day").selectOption("2027-03-03");
	await expect.poll(async () => (await acts(evening)).join()).toContain("Wed 3 Mar");
	await expect
		.poll(() => evening.page.locator(".about").textContent())
		.toContain("Wed 3 Mar 2027 is shown");
	await evening.close();

	const morning = await open({}, "today", "2027-03-01T07:20:00");
	await expect
		.poll(() => morning.page.locator(".act.late").textContent())
		.toContain("for Afternoon");
	await expect
		.poll(() => morning.page.locator(".act.runs").textContent())
		.toContain("Kit K4 waits.");
	await morning.close();

	const over = await open({}, "today", "2027-03-09T07:20:00");
	await expect
		.poll(() => over.page.locator(".about").textContent())
		.toContain("The plan ended on Sun 7 Mar 2027");
	await over.close();

	const wrong = await open({}, "today", "2010-01-01T00:10:00");
	await expect.poll(() => wrong.page.locator(".about").textContent()).toContain("set the clock");
	await expect.poll(() => wrong.headline()).toBe("3 kits are ready: use K1 next");
	await wrong.close();
});

test.each([
	["wide", {}],
	["on a phone in the dark", { ...phone, colorScheme: "dark" }],
	["at 200 %", { viewport: { width: 683, height: 384 } }],
] as const)(
	"clean for axe and nothing beside the screen, %s; its paper is one page",
	{
		timeout: 60_000,
	},
	async (_words, options) => {
		const workbook = await open({ ...options, bypassCSP: true });
		const { page } = workbook;
		const isWide = () =>
			page.evaluate(() => document.documentElement.scrollWidth > window.innerWidth);
		expect(await axeViolations(workbook)).toEqual([]);
		expect(await isWide()).toBe(false);
		for (const name of [
			"Kit K1 was used",
			"No kit was ready",
			"Round done",
			"Kit tested",
			"Received",
		]) {
			await page.getByRole("button", { name, exact: true }).click();
			await page.getByRole("dialog").waitFor();
			expect([name, await axeViolations(workbook)]).toEqual([name, []]);
			expect([name, await isWide()]).toEqual([name, false]);
			await page.keyboard.press("Escape");
			await page.getByRole("dialog").waitFor({ state: "detached" });
		}
		expect(readPdf(await page.pdf({ preferCSSPageSize: true })).pages).toHaveLength(1);
		await workbook.close();
	},
);

test("a log for the bench prints with the columns of the sheets", { timeout: 60_000 }, async () => {
	const workbook = await open();
	const { page } = workbook;
	await page.evaluate(() => {
		window.print = () => document.body.setAttribute("data-printed", "");
	});
	await page.getByRole("button", { name: "Print a log for the bench" }).click();
	await page.locator("body[data-printed]").waitFor();
	const heads = await page
		.locator("#paper thead tr")
		.evaluateAll((rows) =>
			rows.map((row) => [...row.children].map((cell) => cell.firstChild?.textContent)),
		);
	expect(heads[0]).toEqual(["When", "Kit", "What happened", "Written by", "Note"]);
	expect(heads[1]?.slice(0, 4)).toEqual(["Date", "Start", "Ended", "Kits"]);
	expect(heads[1]).toHaveLength(14);
	expect(readPdf(await page.pdf({ preferCSSPageSize: true })).pages).toHaveLength(1);
	await workbook.close();
});

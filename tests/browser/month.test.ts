import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { axeViolations } from "./axeViolations.ts";
import { type Changed, closeClean, openChanged } from "./changedDemo.ts";
import { browser, onStick as site } from "./fixture.ts";
import { printed } from "./paper.ts";

const days = (count: number) =>
	Array.from({ length: count }, (_, at) => `2027-02-${String(at + 1).padStart(2, "0")}`);

const PHONE = { width: 360, height: 740 };

/** A February: a round on each of its first 20 days with two kits, gauze issued by twenties, every day planned. */
const february: Changed = {
	"uses.csv": () =>
		[
			"at,kit,what",
			...days(20).map((day) => `${day} 03:10,K1,used`),
			"2027-02-22 10:00,,none_ready",
			"2027-02-23 05:00,K2,used",
		].join("\n"),
	"rounds-done.csv": () =>
		[
			"date,start,kits,soak_in,soak_out,strength_reading_pct",
			...days(20).map((day, at) => `${day},14:00,K1 K3,15:00,${at === 4 ? "15:12" : "15:20"},0.5`),
		].join("\n"),
	"journal.csv": () =>
		[
			"day,item,lot,entry,quantity,note",
			...days(20).map((day) => `${day},Gauze swab,GS-12,issue,20,`),
		].join("\n"),
	"lots.csv": (text) => `${text.trimEnd()}\nGauze swab,GS-12,600,,2027-01-25,,\n`,
	"past-plans.csv": () =>
		[
			"date,measure_of,expected,set_aside",
			...days(28).flatMap((day) => [`${day},births,6,9`, `${day},rounds,0.6,1`]),
		].join("\n"),
};

describe("the month, planned and done, on a memory stick", { timeout: 90_000 }, () => {
	test("says what was planned, done and not recorded; a figure is taken over in one step", async () => {
		const workbook = await openChanged(browser, site, "month", february);
		const { page } = workbook;
		await page.locator("h1", { hasText: "Feb 2027: planned and done" }).waitFor();
		const rowOf = (name: string) =>
			page.locator(".month-report > .month-table tr", {
				has: page.locator("th", { hasText: name }),
			});
		await expect
			.poll(() => rowOf("Rounds").locator("td").allTextContents())
			.toEqual([
				"16.8",
				"28",
				"20",
				"20 of 28 days recorded",
				"20 days: average of the plan 12, done 20; what was prepared for was enough on 20 of 20",
			]);
		await expect.poll(() => rowOf("Boiled water").textContent()).toContain("not recorded");
		const words = await page.locator(".month-words").textContent();
		expect(words).toContain("no round is written down on: Tue 23 Feb.");
		expect(words).toContain("Soaks shorter than 20 min: Fri 5 Feb, 14:00 (12 min).");
		// 400 swabs for 40 kits that went through.
		const gauze = rowOf("Gauze swab");
		await expect
			.poll(() => gauze.textContent())
			.toContain("10 for each kit by the books (400 for 40)");
		await gauze.getByRole("button").click();
		await expect.poll(() => gauze.textContent()).toContain("10 in the plan.");
		await page.keyboard.press("Control+z");
		await expect.poll(() => gauze.textContent()).toContain("8 in the plan.");
		await closeClean(workbook);
	});

	test("in pictures, each with its answer and the table behind it, on a laptop and on a phone", async () => {
		for (const screen of [{ width: 1366, height: 768 }, PHONE]) {
			const workbook = await openChanged(browser, site, "month", february);
			const { page } = workbook;
			await page.setViewportSize(screen);
			const picture = (title: string) =>
				page.locator(".month-picture", { has: page.getByRole("heading", { name: title }) });
			await picture("Births against the plan")
				.getByText("On 2 of 28 days planned and recorded more births came than were prepared for.")
				.waitFor();
			// One of 11: the exact interval, as any table has it, is 0.23 to 41.3 of 100.
			const needs = picture("Times no kit was ready when needed");
			await needs.getByText("1 of 11, on the days").waitFor();
			await needs.getByText("between 2.3 and 410 in 1\u202f000").waitFor();
			await picture("What was used against the plan")
				.getByText("More went than the plan takes of: Gauze swab (400 instead of 320).")
				.waitFor();
			await picture("Checks that failed").getByText("4 of 13").waitFor();
			await expect.poll(() => page.locator(".month-picture svg[role=img]").count()).toBe(5);
			await needs.getByText("The numbers").click();
			await needs.getByRole("row", { name: "these days" }).waitFor();
			await expect
				.poll(() => page.evaluate(() => document.documentElement.scrollWidth))
				.toBe(screen.width);
			// The checker asks for the style sheet, which the page forbids, so what went wrong is asked before it.
			expect(workbook.errors).toEqual([]);
			expect(await axeViolations(workbook)).toEqual([]);
			const paper = await printed(page, "Print the pictures");
			expect(paper.pages).toHaveLength(1);
			expect(paper.text).toContain("Planned and done, in pictures");
			await workbook.close();
		}
	});

	test.each([
		["of some items", february, 2],
		["of none", {}, 1],
	])("with lines in the journal %s there is no table without rows", async (_, changed, tables) => {
		const workbook = await openChanged(browser, site, "month", changed);
		const { page } = workbook;
		await page.getByText("Nothing is written down in the journal of").waitFor();
		const shown = page.locator(".month-report > .month-table");
		expect(await shown.count()).toBe(tables);
		const rows = shown.locator("tbody");
		for (const body of await rows.all())
			expect(await body.locator("tr").count()).toBeGreaterThan(0);
		await closeClean(workbook);
	});

	test("any span can be chosen; it is saved as a file and prints on one page", async () => {
		const workbook = await openChanged(browser, site, "month", february);
		const { page } = workbook;
		const paper = await printed(page, "Print this page");
		expect(paper.pages).toHaveLength(1);
		expect(paper.text).toContain("Planned and done");
		expect(paper.text).toContain("Seen by the supervisor, date");
		expect(paper.text).toContain("1 of 11, on the days");
		await page.getByLabel("First day").fill("2027-02-01");
		await page.getByLabel("Last day").fill("2027-02-07");
		await page.locator("h1", { hasText: "1 Feb 2027 – 7 Feb 2027" }).waitFor();
		const [download] = await Promise.all([
			page.waitForEvent("download"),
			page.getByRole("button", { name: "Save as month.csv" }).click(),
		]);
		expect(download.suggestedFilename()).toBe("month.csv");
		const csv = readFileSync(await download.path(), "utf8");
		expect(csv).toContain("measure,unit,planned_expected,planned_set_aside,done,note");
		expect(csv).toContain("rounds,rounds,4.2,7,7,7 of 7 days recorded");
		await page.getByLabel("Last day").fill("2027-01-07");
		await page.getByText("Choose a first and a last day").waitFor();
		await closeClean(workbook);
	});
});

import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { type Changed, closeClean, openChanged } from "./changedDemo.ts";
import { browser, onStick as site } from "./fixture.ts";
import { printed } from "./paper.ts";

const days = (count: number) =>
	Array.from({ length: count }, (_, at) => `2027-02-${String(at + 1).padStart(2, "0")}`);

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
			page.locator(".month-report tr", { has: page.locator("th", { hasText: name }) });
		expect(await rowOf("Rounds").locator("td").allTextContents()).toEqual([
			"16.8",
			"28",
			"20",
			"20 of 28 days recorded",
			"20 days: average of the plan 12, done 20; what was prepared for was enough on 20 of 20",
		]);
		expect(await rowOf("Boiled water").textContent()).toContain("not recorded");
		const words = await page.locator(".month-words").textContent();
		expect(words).toContain("Once no kit was ready when needed.");
		expect(words).toContain("no round is written down on: Tue 23 Feb.");
		expect(words).toContain("Soaks shorter than 20 min: Fri 5 Feb, 14:00 (12 min).");
		// 400 swabs for 40 kits that went through.
		const gauze = rowOf("Gauze swab");
		expect(await gauze.textContent()).toContain("10 for each kit by the books (400 for 40)");
		await gauze.getByRole("button").click();
		expect(await gauze.textContent()).toContain("10 in the plan.");
		await page.keyboard.press("Control+z");
		expect(await gauze.textContent()).toContain("8 in the plan.");
		await closeClean(workbook);
	});

	test("any span can be chosen; it is saved as a file and prints on one page", async () => {
		const workbook = await openChanged(browser, site, "month", february);
		const { page } = workbook;
		const paper = await printed(page, "Print this page");
		expect(paper.pages).toHaveLength(1);
		expect(paper.text).toContain("Planned and done");
		expect(paper.text).toContain("Seen by the supervisor, date");
		await page.getByLabel("From").fill("2027-02-01");
		await page.getByLabel("To", { exact: true }).fill("2027-02-07");
		await page.locator("h1", { hasText: "1 Feb 2027 – 7 Feb 2027" }).waitFor();
		const [download] = await Promise.all([
			page.waitForEvent("download"),
			page.getByRole("button", { name: "Save as month.csv" }).click(),
		]);
		expect(download.suggestedFilename()).toBe("month.csv");
		const csv = readFileSync(await download.path(), "utf8");
		expect(csv).toContain("measure,unit,planned_expected,planned_set_aside,done,note");
		expect(csv).toContain("rounds,rounds,4.2,7,7,7 of 7 days recorded");
		await page.getByLabel("To", { exact: true }).fill("2027-01-07");
		await page.getByText("Choose a first and a last day").waitFor();
		await closeClean(workbook);
	});
});

import { describe, expect, test } from "vitest";
import { folderOf, languages } from "../../src/messages/languages.ts";
import { type Changed, closeClean, openChanged } from "./changedDemo.ts";
import { browser, onStick as site } from "./fixture.ts";
import { printed } from "./paper.ts";

const A4_POINTS = { width: 596, height: 843 };
const LETTER_POINTS = { width: 612, height: 792 };
const size = ({ width, height }: { width: number; height: number }) => ({ width, height });

describe("kits and their labels, on a memory stick", { timeout: 90_000 }, () => {
	const open = (sheet: string, changes?: Changed) => openChanged(browser, site, sheet, changes);

	test("the history of a kit lists every check, the latest first, also those that do not count", async () => {
		const workbook = await open("kit-history", {
			"checks.csv": (text) =>
				`${text}2027-02-28 09:00,K3,,yes,,,,,,begun\n2027-05-01 09:00,K3,12,yes,yes,yes,yes,yes,yes,later\nsoon,K3,12,yes,,,,,,when\n`,
		});
		const { page } = workbook;
		await page.getByLabel("Kit", { exact: true }).selectOption("K3");
		const results = await page.locator(".history tbody tr td:nth-child(2)").allTextContents();
		expect(results.map((text) => text.replace(/^\S+ /, ""))).toEqual([
			"left out",
			"not finished",
			"passed",
			"passed",
			"in repair",
			"passed",
			"cannot be read",
		]);
		const history = await printed(page, "Print this history");
		expect(history.pages).toHaveLength(1);
		// The day of its last check cannot be read: it may have failed it since.
		expect(history.pages[0]).toContain("Kit K3: not known");
		const blank = await printed(page, "Print check sheets for all kits");
		expect(blank.pages).toHaveLength(7);
		expect(blank.pages[2]).toContain("Readiness checks of kit K3");
		expect(blank.pages[2]).toContain("Valve leaf (2)");
		expect(blank.pages[2]).toContain("Pieces counted, of 12");
		expect(blank.pages[2]?.match(/yes \/ no/g)?.length).toBe(42);
		await closeClean(workbook);
	});

	test("labels: as many as are asked for, on paper as on the screen", async () => {
		const workbook = await open("labels");
		const { page } = workbook;
		const count = () => page.locator(".label-preview .paper-label").count();
		await expect.poll(count).toBe(10);
		const [solutions, sets, perKit] = await page.getByRole("spinbutton").all();
		await solutions?.fill("3");
		await sets?.fill("2");
		await perKit?.fill("1");
		await expect.poll(count).toBe(3 + 2 * 3 + 6);
		await expect
			.poll(() => page.locator(".label-count").textContent())
			.toBe("15 labels on 3 sheets: 3 for solution, 6 for rinse buckets, 6 for kits.");
		await page.getByLabel("Made at").fill("2027-03-01T21:15");
		for (const [format, points] of [
			["A4", A4_POINTS],
			["Letter", LETTER_POINTS],
		] as const) {
			const paper = await printed(page, "Print these labels", format);
			expect(size(paper)).toEqual(points);
			expect(paper.pages).toHaveLength(3);
			const text = paper.pages.join("\n");
			expect(text.match(/Chlorine solution 0.5 %/g)).toHaveLength(3);
			expect(text.match(/Tue 2 Mar 2027, 21:15/g)).toHaveLength(3);
			expect(text.match(/NEVER with vinegar/g)).toHaveLength(3);
			expect(text.match(/lot B-0211/g)).toHaveLength(3);
			expect(text.match(/Rinse bucket [123] of 3/g)).toHaveLength(6);
			// K1 to K3 are ready, each to its own day; K4 was used, K5 is incomplete, K6 in repair.
			expect(text.match(/USE BY/g)).toHaveLength(3);
			// The head of each sheet says the last day of the plan, too.
			expect(text.match(/(?<!to )(Fri 5|Sat 6|Sun 7) Mar 2027/g)).toHaveLength(3);
			expect(text.match(/DO NOT USE/g)).toHaveLength(3);
		}
		for (const field of [solutions, sets, perKit]) await field?.fill("0");
		await page.getByRole("button", { name: "Print these labels" }).click();
		await page.locator("#told", { hasText: "Choose at least one label" }).waitFor();
		await closeClean(workbook);
	});

	test.each(languages.map(({ code }) => folderOf(code)))(
		"every label keeps to its place, a solution's with all there is to say too (%s)",
		async (language) => {
			const there = { ...site, address: `${site.address}${language}` };
			const workbook = await openChanged(browser, there, "labels", {
				// Of unknown age, and too little for one preparation.
				"lots.csv": (text) =>
					text.replace(/^(Liquid bleach 3.5 %,B-0211),[^,]*,[^,]*,[^,]*/m, "$1,400,,"),
			});
			const label = workbook.page.locator(".label-solution").first();
			await expect.poll(() => label.textContent()).toMatch(/400\smL/);
			await expect.poll(() => label.textContent()).toMatch(/180/);
			const heights = await workbook.page
				.locator(".paper-label")
				.evaluateAll((all) => all.map((one) => one.getBoundingClientRect().height));
			expect(heights).toHaveLength(10);
			for (const pixels of heights) expect(pixels / (96 / 25.4)).toBeLessThan(81.1);
			await closeClean(workbook);
		},
	);

	test.each(languages.map(({ code }) => folderOf(code)))(
		"a kit of which nothing is recorded has room for what is to be ticked (%s)",
		async (language) => {
			const there = { ...site, address: `${site.address}${language}` };
			const head = (text: string) => text.split("\n").slice(0, 1).join("");
			const workbook = await openChanged(browser, there, "labels", {
				"uses.csv": head,
				"rounds-done.csv": head,
				"checks.csv": head,
				"kits.csv": (text) => text.replace(/in_service,[^,]*/g, "in_service,"),
			});
			const labels = workbook.page.locator(".label-kit", { hasText: "☐" });
			await expect.poll(() => labels.count()).toBe(6);
			const heights = await labels.evaluateAll((all) =>
				all.map((one) => one.getBoundingClientRect().height),
			);
			for (const pixels of heights) expect(pixels / (96 / 25.4)).toBeLessThan(81.1);
			// No box ends a line, apart from what it is for.
			expect(await labels.first().textContent()).not.toContain("☐ ");
			await closeClean(workbook);
		},
	);

	test("labels leave room to write what is not known", async () => {
		const workbook = await open("labels", {
			"lots.csv": (text) => text.replace(/^Liquid bleach.*\r?\n/gm, ""),
		});
		const label = workbook.page.locator(".label-solution").first();
		await expect.poll(() => label.textContent()).toContain("lot ________");
		await expect.poll(() => label.locator(".line-to-write").count()).toBe(3);
		await closeClean(workbook);
	});
});

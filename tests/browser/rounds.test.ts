import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { startBrowser } from "./chromium.ts";
import { printed } from "./paper.ts";
import { type Site, siteOnStick } from "./site.ts";
import { WorkbookPage } from "./workbookPage.ts";

const sample = join(import.meta.dirname, "../../sample-csv");
const A4_POINTS = { width: 596, height: 843 };
const LETTER_POINTS = { width: 612, height: 792 };
const size = ({ width, height }: { width: number; height: number }) => ({ width, height });

describe("what must be ready, on a memory stick", { timeout: 90_000 }, () => {
	let browser: Browser;
	let site: Site;
	beforeAll(async () => {
		[browser, site] = await Promise.all([startBrowser(), siteOnStick()]);
	}, 60_000);
	afterAll(async () => {
		await browser?.close();
		site?.close();
	});

	/** Opens the demo with some files changed: each given the text as it is, it gives the text it shall be. */
	async function open(
		sheet: string,
		changes: Readonly<Record<string, (text: string) => string>> = {},
	): Promise<WorkbookPage> {
		const workbook = await WorkbookPage.open(browser, site, {}, sheet);
		if (Object.keys(changes).length === 0) return workbook;
		const files = Object.fromEntries(
			readdirSync(sample)
				.filter((name) => name.endsWith(".csv"))
				.map((name) => [name, readFileSync(join(sample, name), "utf8")]),
		);
		for (const [name, change] of Object.entries(changes)) files[name] = change(files[name] ?? "");
		await workbook.page.evaluate((all) => {
			const dataTransfer = new DataTransfer();
			for (const [name, text] of Object.entries(all))
				dataTransfer.items.add(new File([text], name));
			document.body.dispatchEvent(
				new DragEvent("drop", { dataTransfer, bubbles: true, cancelable: true }),
			);
		}, files);
		await workbook.page.locator("#told", { hasText: "was opened" }).waitFor();
		return workbook;
	}
	const setting = (key: string, value: string) => ({
		"unit.csv": (text: string) => text.replace(new RegExp(`^${key},.*$`, "m"), `${key},${value}`),
	});

	async function done(workbook: WorkbookPage): Promise<void> {
		expect(workbook.errors).toEqual([]);
		expect(workbook.requestsElsewhere).toEqual([]);
		await workbook.close();
	}

	test("the run sheet goes from day to day by its buttons and its list, and the picture follows", async () => {
		const workbook = await open("run-sheet.csv");
		const { page } = workbook;
		const who = page.locator(".who li");
		await expect(who.count()).resolves.toBe(3);
		const soaks = page.locator(".timeline svg text", { hasText: "soak" });
		await expect(soaks.allTextContents()).resolves.toEqual([
			"soak 07:38, out from 07:58",
			"soak 14:38, out from 14:58",
			"soak 21:38, out from 21:58",
		]);
		expect(await who.first().textContent()).toBe(
			"Morning: 1 person 07:00–07:38, 07:58–08:07 and 08:32–08:50; hands free 07:38–07:58 and 08:07–08:32.",
		);
		await page.getByRole("button", { name: "Next day →" }).focus();
		for (const day of ["Tue 2 Mar", "Wed 3 Mar"]) {
			await page.keyboard.press("Enter");
			await expect(page.locator(".run-sheet h2").textContent()).resolves.toBe(day);
		}
		await page.getByLabel("Day", { exact: true }).selectOption("2027-03-07");
		await expect(page.locator(".run-sheet h2").textContent()).resolves.toBe("Sun 7 Mar");
		await page.getByRole("button", { name: "Next day →" }).press("Enter");
		await expect(page.locator(".run-sheet h2").textContent()).resolves.toBe("Sun 7 Mar");
		await done(workbook);
	});

	test("a round past midnight shows the next day's date", async () => {
		const workbook = await open("run-sheet.csv", {
			"rounds.csv": () => "start,label\n08:00,Morning\n23:10,Night\n",
		});
		const night = await workbook.page.locator(".who li").last().textContent();
		expect(night).toContain("23:10–00:16 (Tue 2 Mar)");
		const paper = await printed(workbook.page, "Print this day’s run sheet");
		expect(paper.pages).toHaveLength(1);
		expect(paper.pages[0]).toContain("(Tue 2 Mar)");
		await done(workbook);
	});

	test.each([
		["A4", A4_POINTS],
		["Letter", LETTER_POINTS],
	] as const)(
		"the run sheet prints one page a day on %s, the vinegar caution between descaling and soak",
		async (format, points) => {
			const workbook = await open("run-sheet.csv", setting("descale_every_rounds", "1"));
			const paper = await printed(workbook.page, "Print every day", format);
			expect(size(paper)).toEqual(points);
			expect(paper.pages).toHaveLength(7);
			for (const page of paper.pages) {
				expect(page).toContain("Willow Ford delivery unit (invented)");
				expect(page.match(/Soak under the solution/g)).toHaveLength(3);
				expect(page).toContain("Checked by, date");
				expect(page).toContain("A planning aid");
			}
			const [descaled = ""] = paper.pages.filter((page) => page.includes("Descale"));
			const places = ["Descale in", "Rinse and drain", "STOP. Any smell of vinegar left?"].map(
				(words) => descaled.indexOf(words),
			);
			expect(Math.min(...places)).toBeGreaterThan(0);
			expect(places).toEqual([...places].sort((a, b) => a - b));
			const after = descaled.slice(places.at(-1));
			expect(after.indexOf("Soak under")).toBeLessThan(after.indexOf("Rinse in three"));
			await done(workbook);
		},
	);

	test("where each kit comes as it is used, the run sheet says so and gives minutes for one kit", async () => {
		const workbook = await open("run-sheet.csv", setting("reprocessing", "after_each_use"));
		const { page } = workbook;
		expect(await workbook.headline()).toBe("Each kit takes 110 minutes as it comes");
		expect(await page.locator(".run-sheet").textContent()).toContain(
			"reprocesses each kit as soon as it has been used",
		);
		expect(await page.locator(".timeline svg").textContent()).toContain("soak min 38");
		const paper = await printed(page, "Print this day’s run sheet");
		expect(paper.pages).toHaveLength(1);
		expect(paper.pages[0]).toContain("38–58 min");
		expect(paper.pages[0]).toContain("White crust");
		await workbook.goTo("kit-cover.csv");
		expect(await page.locator(".in-words").first().textContent()).toContain("With 4 kits");
		expect(await page.locator(".brief tbody tr").count()).toBe(3);
		await workbook.goTo("day-cover.csv");
		expect(await page.locator(".through-day figcaption").textContent()).toContain(
			"No hour stands out",
		);
		await done(workbook);
	});

	test("kit cover says how often in years, and what would help, best first", async () => {
		const workbook = await open("kit-cover.csv");
		const { page } = workbook;
		const words = (await page.locator(".in-words").textContent()) ?? "";
		expect(words.replaceAll("\u202f", " ")).toBe(
			"With 4 kits in service about one need in 15 000 finds none ready, about once in 70 years.",
		);
		const rows = await page.locator(".brief tbody tr").allTextContents();
		expect(rows[0]).toContain("As it is now");
		const unmet = await page.locator(".brief tbody td.numeric").allTextContents();
		const others = unmet.slice(1).map(Number);
		expect(others.length).toBeGreaterThan(2);
		expect(others).toEqual([...others].sort((a, b) => a - b));
		await page.getByRole("link", { name: "All about these changes" }).click();
		expect(await workbook.headline()).toBe("What would help most: one more kit");
		await done(workbook);
	});

	test("the weakest hour is named over its picture, in which every round start is drawn", async () => {
		const workbook = await open("day-cover.csv");
		expect((await workbook.headline()).replaceAll("\u202f", " ")).toBe(
			"Weakest at 08:30, when about one need in 1 400 finds none ready",
		);
		const pictures = workbook.page.locator(".through-day svg");
		await expect(pictures.count()).resolves.toBe(2);
		const text = await pictures.first().textContent();
		for (const start of ["Morning 07:00", "Afternoon 14:00", "Evening 21:00"])
			expect(text).toContain(start);
		await expect(pictures.last().locator(".risk-bar rect").count()).resolves.toBe(24);
		await done(workbook);
	});

	test("several kinds of kit have a picture, words and a next kit each", async () => {
		const workbook = await open("day-cover.csv", {
			"kind-use.csv": () => "kind,uses_per_100_births\nBag and mask kit,8\nSuction kit,20\n",
			"kinds.csv": (text) => `${text}Suction kit,Bulb,1\n`,
			"kits.csv": (text) =>
				`${text}S1,Suction kit,in_service,2027-02-27,\nS2,Suction kit,in_service,2027-02-28,\n`,
		});
		const { page } = workbook;
		await expect(page.locator(".through-day h2").allTextContents()).resolves.toEqual([
			"Bag and mask kit",
			"Suction kit",
		]);
		await workbook.goTo("kit-cover.csv");
		await expect(page.locator(".in-words").count()).resolves.toBe(2);
		await expect(page.locator(".brief caption").count()).resolves.toBe(2);
		await workbook.goTo("kit-register.csv");
		expect(await workbook.headline()).toBe(
			"Use K1 (Bag and mask kit) or S1 (Suction kit) next; all 6 kits count",
		);
		await done(workbook);
	});

	test("a failed check typed in takes the kit out of the plan, and the register names the next", async () => {
		const workbook = await open("checks.csv");
		const { page } = workbook;
		const blankRow = (await workbook.table()).length - 2;
		await workbook.click(blankRow, 0);
		await workbook.paste("2027-02-28 20:00\tK1\t12\tyes\tyes\tyes\tno\tyes\tyes\tleaks");
		await workbook.goTo("kit-register.csv");
		expect(await workbook.headline()).toBe("Use K2 next; 3 of 4 kits count");
		const line = page.locator(".kit-lines li", { hasText: "K1" });
		expect(await line.textContent()).toContain("✕ repair");
		expect(await line.textContent()).toContain("the seal does not hold; not counted");
		await workbook.goTo("this-week");
		expect(await workbook.headline()).toBe("4 kits are needed; this unit has only 3 in service");
		await workbook.goTo("kit-history");
		expect(await workbook.headline()).toBe("Kit K1: repair");
		const first = page.locator(".history tbody tr").first();
		expect(await first.textContent()).toContain("the seal does not hold");
		await first.getByRole("button").click();
		await page.locator(`a[data-sheet="checks.csv"][aria-current=page]`).waitFor();
		await done(workbook);
	});

	test("the history of a kit lists every check, the latest first, also those that do not count", async () => {
		const workbook = await open("kit-history", {
			"checks.csv": (text) =>
				`${text}2027-02-28 09:00,K3,,yes,,,,,,begun\n2027-05-01 09:00,K3,12,yes,yes,yes,yes,yes,yes,later\nsoon,K3,12,yes,,,,,,when\n`,
		});
		const { page } = workbook;
		await page.getByLabel("Kit", { exact: true }).selectOption("K3");
		const results = await page.locator(".history tbody tr td:nth-child(2)").allTextContents();
		expect(results.map((text) => text.replace(/^\S+ /, ""))).toEqual([
			"not used",
			"not finished",
			"ready",
			"ready",
			"repair",
			"cannot be read",
		]);
		const history = await printed(page, "Print this history");
		expect(history.pages).toHaveLength(1);
		expect(history.pages[0]).toContain("Kit K3: ready until Sun 7 Mar 2027");
		const blank = await printed(page, "Print check sheets for all kits");
		expect(blank.pages).toHaveLength(4);
		expect(blank.pages[2]).toContain("Readiness checks of kit K3");
		expect(blank.pages[2]).toContain("Valve leaf (2)");
		expect(blank.pages[2]).toContain("Pieces counted, of 12");
		expect(blank.pages[2]?.match(/yes \/ no/g)?.length).toBe(42);
		await done(workbook);
	});

	test("labels: as many as are asked for, on paper as on the screen", async () => {
		const workbook = await open("labels");
		const { page } = workbook;
		const count = () => page.locator(".label-preview .paper-label").count();
		expect(await count()).toBe(8);
		const [solutions, sets, perKit] = await page.getByRole("spinbutton").all();
		await solutions?.fill("3");
		await sets?.fill("2");
		await perKit?.fill("1");
		expect(await count()).toBe(3 + 2 * 3 + 4);
		expect(await page.locator(".label-count").textContent()).toBe(
			"13 labels on 3 sheets: 3 for solution, 6 for rinse buckets, 4 for kits.",
		);
		await page.getByLabel("Made at").fill("2027-03-01T21:15");
		await page.getByLabel("Done on").fill("2027-02-26");
		for (const [format, points] of [
			["A4", A4_POINTS],
			["Letter", LETTER_POINTS],
		] as const) {
			const paper = await printed(page, "Print these labels", format);
			expect(size(paper)).toEqual(points);
			expect(paper.pages).toHaveLength(3);
			const text = paper.pages.join("\n");
			expect(text.match(/Chlorine solution 0.5 %/g)).toHaveLength(3);
			expect(text.match(/2027-03-02 21:15/g)).toHaveLength(3);
			expect(text.match(/NEVER with vinegar/g)).toHaveLength(3);
			expect(text.match(/lot B-0211/g)).toHaveLength(3);
			expect(text.match(/Rinse bucket [123] of 3/g)).toHaveLength(6);
			expect(text.match(/Fri 5 Mar 2027/g)).toHaveLength(4);
		}
		for (const field of [solutions, sets, perKit]) await field?.fill("0");
		await page.getByRole("button", { name: "Print these labels" }).click();
		await page.locator("#told", { hasText: "Choose at least one label" }).waitFor();
		await done(workbook);
	});

	test("labels leave room to write what is not known", async () => {
		const workbook = await open("labels", {
			"lots.csv": (text) => text.replace(/^Liquid bleach.*\r?\n/gm, ""),
		});
		const label = workbook.page.locator(".label-solution").first();
		expect(await label.textContent()).toContain("lot ________");
		await expect(label.locator(".line-to-write").count()).resolves.toBe(4);
		await done(workbook);
	});
});

import type { Page } from "playwright-core";
import { describe, expect, test } from "vitest";
import { demoWordsOf } from "../../src/messages/demo/demoWordsOf.ts";
import { axeViolations } from "./axeViolations.ts";
import { closeClean } from "./changedDemo.ts";
import { browser, onStick, served } from "./fixture.ts";
import { printed, readPdf } from "./paper.ts";
import { WorkbookPage } from "./workbookPage.ts";

/** Names of the demo in English, and in French. */
const names = new Map(Object.values(demoWordsOf("fr")).flatMap((texts) => Object.entries(texts)));

/** Kinds of space that French puts before its signs and between thousands. */
const plain = (words: string | null) => (words ?? "").replace(/[\u00a0\u202f]/g, " ");

describe.each([
	["served", served],
	["on a memory stick", onStick],
] as const)("in French, %s", { timeout: 180_000 }, (_, site) => {
	const open = (sheet?: string, options = {}) =>
		WorkbookPage.open(browser, { ...site, address: `${site.address}fr/` }, options, sheet);
	const textOf = async (page: Page, selector: string) =>
		plain(await page.locator(selector).first().textContent());

	test("sheets, reasons and problems are French, with decimal commas and French dates", async () => {
		const workbook = await open();
		const { page } = workbook;
		expect(await page.locator("html").getAttribute("lang")).toBe("fr");
		expect(plain(await workbook.headline())).toBe(
			"4 kits suffisent ; cette unité en a 4 en service",
		);
		const table = await workbook.table();
		expect(table[0]?.slice(0, 2).map(plain)).toEqual([
			"À prévoir moy. : en moyenne",
			"lun. 1er mars",
		]);
		expect(plain((await workbook.row("Solution chlorée"))[1] ?? "")).toBe("11,0");
		await workbook.click(4, 1);
		expect(await textOf(page, ".pane")).toMatch(/^Retour aux cellules\s?Pourquoi ce nombre ?/);
		expect(await textOf(page, ".pane .formula")).not.toMatch(/\b(the|of|and)\b/);
		for (const [file, words] of [
			["kit-cover.csv", "kits suffisent"],
			["forecast.csv", "le plus le mer. 3 mars : 8,0"],
			["strength.csv", "utilisable jusqu’au sam. 17 juil. 2027"],
			["boiling.csv", "la veille au soir, dim. 28 févr."],
			["storekeeper", "à commander maintenant"],
		] as const) {
			await workbook.goTo(file);
			expect(plain(await workbook.headline()), file).toContain(words);
		}
		await workbook.goTo("this-week");
		await workbook.type(0, 1, "beaucoup");
		await page
			.locator(".problem-list .problem-words:visible", { hasText: "beaucoup" })
			.first()
			.waitFor();
		expect(await textOf(page, ".problem-list.error")).toContain("un nombre de 0 à 500");
		await closeClean(workbook);
	});

	test("what a round proposes has a decimal comma", async () => {
		const workbook = await open("today");
		const { page } = workbook;
		await page.clock.setFixedTime(new Date("2027-03-01T09:40:00"));
		await page.reload();
		await page.getByRole("button", { name: "Séance faite" }).click();
		const litres = page.getByRole("dialog").getByLabel("Solution préparée");
		await expect.poll(() => litres.inputValue()).toBe("5,5");
		await closeClean(workbook);
	});

	test("a typed 1.000 is not taken for 1: it may be a thousand", async () => {
		const workbook = await open("");
		const { page } = workbook;
		await page.getByRole("button", { name: "Commencer à vide" }).click();
		const line = (words: string) => page.locator(".begin-line", { hasText: words }).first();
		await line("Produit chloré utilisé").locator("select").selectOption({ index: 1 });
		const inStore = line("Au magasin");
		await inStore.locator("input").fill("5 x 1.000");
		await inStore.locator("input").press("Enter");
		await expect
			.poll(async () => plain(await inStore.textContent()))
			.toContain("« 1.000 » peut se lire de deux façons ; écrivez 1000 ou 1.");
		const births = line("Naissances par jour");
		await births.locator("input").fill("4.500");
		await births.locator("input").press("Enter");
		await expect
			.poll(async () => plain(await births.textContent()))
			.toContain("écrivez 4500 ou 4,5.");
		await closeClean(workbook);
	});

	test("labels and the plan are French on paper", async () => {
		const workbook = await open("labels");
		const { page } = workbook;
		await page.getByLabel("Préparée le").fill("2027-03-01T21:15");
		const labels = plain((await printed(page, "Imprimer ces étiquettes")).text);
		expect(labels).toContain("Solution chlorée 0,5 %");
		expect(labels).toContain("JAMAIS avec du vinaigre");
		expect(labels).toContain("mar. 2 mars 2027, 21:15");
		await workbook.goTo("this-week");
		const plan = readPdf(await page.pdf({ preferCSSPageSize: true }));
		expect(plan.pages).toHaveLength(1);
		expect(plain(plan.text)).toContain("du lun. 1er mars 2027 au dim. 7 mars 2027");
		expect(plain(plan.text)).toMatch(/Solution chlorée.*11,0/);
		// It stands beside the problems, so that other words come between its lines.
		expect(plain(plan.text)).toMatch(
			/Jamais de chlore et de vinaigre dans la même[\s\S]*bassine, ni l’un après l’autre sans[\s\S]*rinçage/,
		);
		await closeClean(workbook);
	});

	test("the link to the other language leads to the same sheet, and the work goes with it", async () => {
		const workbook = await WorkbookPage.open(browser, site, {}, "births.csv");
		const { page } = workbook;
		await workbook.type(0, 1, "12.5");
		await expect.poll(async () => (await workbook.row("2027-03-01"))[1]).toBe("12.5");
		await page.locator(".rail a[hreflang=fr]").click();
		await page.getByRole("button", { name: "Reprendre le brouillon" }).click();
		await expect.poll(async () => (await workbook.row("2027-03-01"))[1]).toBe("12,5");
		expect(page.url()).toMatch(/fr\/index\.html#births\.csv$/);
		await workbook.type(1, 1, "3,5");
		await expect.poll(async () => (await workbook.row("2027-03-02"))[1]).toBe("3,5");
		await page.locator(".rail a[hreflang=en]").click();
		await page.getByRole("button", { name: "Go on with the draft" }).click();
		await expect.poll(async () => (await workbook.row("2027-03-02"))[1]).toBe("3,5");
		expect((await workbook.row("2027-03-01"))[1]).toBe("12.5");
		expect(page.url()).toMatch(/\/index\.html#births\.csv$/);
		expect(page.url()).not.toContain("/fr/index.html");
		await closeClean(workbook);
	});

	test("pages to read lead to each other, and say that the translation awaits review", async () => {
		const { page, ...workbook } = await open();
		for (const name of ["guide.html", "methods.html", "sources.html"]) {
			await page.goto(`${site.address}fr/${name}`);
			expect(await page.locator("html").getAttribute("lang")).toBe("fr");
			expect(await textOf(page, ".foot")).toContain(
				"attend d’être relue par une personne qualifiée",
			);
			await page.locator(".foot a[hreflang=en]").click();
			await page.waitForURL(`**/${name}`);
			expect(page.url()).toBe(`${site.address}${name}`);
			expect(await textOf(page, ".foot")).not.toContain("awaits review");
			await page.locator(".foot a[hreflang=fr]").click();
			await page.waitForURL(`**/fr/${name}`);
		}
		await workbook.context.close();
	});

	test("no English name of the demo is left on a page", async () => {
		const workbook = await open();
		for (const file of [
			"this-week",
			"today",
			"run-sheet.csv",
			"steps.csv",
			"mixing.csv",
			"labels",
			"order.csv",
			"usage.csv",
			"kinds.csv",
			"kits.csv",
			"checks.csv",
			"storekeeper",
			"monday",
			"month",
			"tonight.csv",
			"boiling.csv",
			"kit-history",
			"kit-register.csv",
			"uses.csv",
			"rounds-done.csv",
			"stock.csv",
			"take-first.csv",
			"journal.csv",
			"what-if",
		]) {
			await workbook.goTo(file);
			await workbook.drawn();
			// biome-ignore lint/performance/useDomNodeTextContent: what is hidden is not read
			const shown = await workbook.page.locator("main").innerText();
			const left = [...names.keys()].filter((name) => holds(shown, name));
			expect(left, file).toEqual([]);
			if (file === "steps.csv") expect(plain(shown)).toContain("Rechercher les dégâts et égoutter");
		}
		await closeClean(workbook);
	});

	test("axe finds nothing wrong", async () => {
		const workbook = await open("this-week", { bypassCSP: true });
		for (const file of [
			"this-week",
			"kit-cover.csv",
			"mixing.csv",
			"labels",
			"storekeeper",
			"unit.csv",
		]) {
			await workbook.goTo(file);
			expect(await axeViolations(workbook), file).toEqual([]);
		}
		await workbook.close();
	});
});

/** Whether a name stands in a text, not as a part of another word. */
function holds(text: string, name: string): boolean {
	const at = text.indexOf(name);
	const around = at < 0 ? "" : `${text[at - 1] ?? ""}${text[at + name.length] ?? ""}`;
	return at >= 0 && !/\p{L}/u.test(around);
}

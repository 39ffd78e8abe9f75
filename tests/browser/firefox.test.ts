import { execFileSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import type { Browser } from "puppeteer-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { FirefoxWorkbook, startFirefox } from "./firefox.ts";
import { type Site, servedSite, siteOnStick } from "./site.ts";

const axe = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
/** One of each make: the plan, typed sheets, a page of pictures, instructions, forms. */
const SHEETS = ["this-week", "births.csv", "unit.csv", "mixing.csv", "run-sheet.csv", "order.csv"];
const WEDNESDAY = 3;

describe.each([
	["served", servedSite],
	["on a memory stick", siteOnStick],
] as const)("in Firefox, %s", { timeout: 90_000 }, (_, start) => {
	let browser: Browser;
	let site: Site;
	beforeAll(async () => {
		[browser, site] = await Promise.all([startFirefox(), start()]);
	}, 90_000);
	afterAll(async () => {
		await browser?.close();
		site?.close();
	});

	/** A cell of the plain table, which screen readers read; rows and columns count from 1. */
	const figure = (row: number, column: number) =>
		`.as-table tbody tr:nth-child(${row}) td:nth-of-type(${column}) .figure`;

	test("births typed into the plan change what depends on them, and undo takes it back", async () => {
		const workbook = await FirefoxWorkbook.open(browser, site);
		const { page } = workbook;
		const before = await workbook.text(figure(2, WEDNESDAY));
		await (await workbook.cell(0, WEDNESDAY)).click();
		await page.keyboard.type("40");
		await page.keyboard.press("Enter");
		expect(await workbook.text(figure(1, WEDNESDAY))).toBe("40");
		expect(await workbook.text(figure(2, WEDNESDAY))).not.toBe(before);
		await page.keyboard.down("Control");
		await page.keyboard.press("z");
		await page.keyboard.up("Control");
		await expect.poll(() => workbook.text(figure(2, WEDNESDAY))).toBe(before);
		expect(workbook.errors).toEqual([]);
		expect(workbook.requestsElsewhere).toEqual([]);
		await workbook.close();
	});

	test("a figure says why it is what it is, reached with the keys alone", async () => {
		const workbook = await FirefoxWorkbook.open(browser, site);
		await (await workbook.cell(0, 1)).click();
		await workbook.page.keyboard.press("ArrowDown");
		await workbook.page.waitForFunction(() =>
			document.querySelector(".pane")?.textContent?.includes("Kits to reprocess"),
		);
		const pane = await workbook.text(".pane");
		expect(pane).toContain("Why this number?");
		expect(pane).toContain("kits");
		await workbook.close();
	});

	test("no sheet breaks the content security policy or asks for anything from elsewhere", async () => {
		const workbook = await FirefoxWorkbook.open(browser, site);
		const sheets = await workbook.page.$$eval("a[data-sheet]", (links) =>
			links.map((link) => (link as HTMLElement).dataset.sheet ?? ""),
		);
		expect(sheets.length).toBeGreaterThan(20);
		for (const sheet of sheets) await workbook.goTo(sheet);
		expect(workbook.errors).toEqual([]);
		expect(workbook.requestsElsewhere).toEqual([]);
		await workbook.close();
	});

	test("script that is put into the page is stopped", async () => {
		const workbook = await FirefoxWorkbook.open(browser, site);
		const found = await workbook.page.evaluate(async () => {
			const script = document.createElement("script");
			script.textContent = "document.title = 'broken'";
			const button = document.createElement("button");
			button.setAttribute("onclick", "document.title = 'broken'");
			document.body.append(script, button);
			button.click();
			// Later, because what runs on behalf of the test itself may be exempt.
			const evaluated = await new Promise((answer) => {
				setTimeout(() => {
					try {
						// biome-ignore lint/security/noGlobalEval: that it is refused is what is tested
						answer(globalThis.eval("'ran'"));
					} catch (error) {
						answer((error as Error).name);
					}
				});
			});
			return { evaluated, title: document.title };
		});
		expect(found.evaluated).toBe("EvalError");
		expect(found.title).not.toBe("broken");
		await workbook.close();
	});

	test("the plan prints on one page", async () => {
		const workbook = await FirefoxWorkbook.open(browser, site);
		const headline = await workbook.text("#sheet h1");
		const pdf = await workbook.page.pdf({ format: "A4", landscape: true });
		const text = execFileSync("pdftotext", ["-layout", "-", "-"], { input: pdf, encoding: "utf8" });
		expect(text.split("\f").slice(0, -1)).toHaveLength(1);
		expect(text.replace(/\s+/g, " ")).toContain(headline.slice(0, 20));
		await workbook.close();
	});
});

describe("in Firefox", { timeout: 120_000 }, () => {
	let browser: Browser;
	let site: Site;
	beforeAll(async () => {
		[browser, site] = await Promise.all([startFirefox(), servedSite()]);
	}, 90_000);
	afterAll(async () => {
		await browser?.close();
		site?.close();
	});

	/** What axe finds wrong on the page as it is. */
	async function violations({ page }: FirefoxWorkbook): Promise<string[]> {
		await page.evaluate(axe);
		return page.evaluate(async () => {
			const { axe } = window as unknown as { axe: typeof import("axe-core") };
			const found = await axe.run(document);
			return found.violations.map(
				({ id, nodes }) => `${id}: ${nodes.map((node) => node.html).join(" | ")}`,
			);
		});
	}

	test("the main sheets and pages are clean for axe", async () => {
		const workbook = await FirefoxWorkbook.open(browser, site);
		for (const sheet of SHEETS) {
			await workbook.goTo(sheet);
			expect(await violations(workbook), sheet).toEqual([]);
		}
		for (const page of ["guide.html", "sources.html", "methods.html"]) {
			await workbook.page.goto(site.address + page);
			expect(await violations(workbook), page).toEqual([]);
		}
		await workbook.close();
	});

	test("what was kept opens when the server is gone", async () => {
		const other = await servedSite();
		const workbook = await FirefoxWorkbook.open(browser, other);
		await workbook.page.waitForFunction(() =>
			document.querySelector("#offline")?.textContent?.includes("Kept on this device"),
		);
		other.close();
		await workbook.page.reload();
		await workbook.page.waitForSelector("#sheet h1");
		await workbook.page.goto(`${other.address}guide.html`);
		expect(await workbook.text("h1")).not.toBe("");
		await workbook.close();
	});
});

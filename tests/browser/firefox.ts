import { existsSync } from "node:fs";
import puppeteer, { type Browser, type ElementHandle, type Page } from "puppeteer-core";
import type { Site } from "./site.ts";

/** The Firefox of this machine: $FIREFOX, or firefox-esr or firefox where systems put them. */
export function firefoxPath(): string {
	const found = [process.env.FIREFOX, "/usr/bin/firefox-esr", "/usr/bin/firefox"].find(
		(path) => path !== undefined && path !== "" && existsSync(path),
	);
	if (found) return found;
	throw new Error(
		"No Firefox was found. Install it (Debian: apt-get install firefox-esr) or set FIREFOX to its path.",
	);
}

/**
 * Starts the Firefox that the system's packages bring. It is spoken to over WebDriver BiDi,
 * by another library than Chromium is, because playwright asks of it what an extended-support
 * release does not know.
 */
export function startFirefox(): Promise<Browser> {
	return puppeteer.launch({
		browser: "firefox",
		executablePath: firefoxPath(),
		headless: true,
		// The paper of thousands of units takes minutes.
		protocolTimeout: 600_000,
	});
}

/** The workbook in Firefox, as a person handles it. Collects what must never happen. */
export class FirefoxWorkbook {
	readonly page: Page;
	/** Requests to anywhere but the site itself. */
	readonly requestsElsewhere: string[] = [];
	/** Errors of scripts, and what the content security policy had to stop. */
	readonly errors: string[] = [];

	private constructor(page: Page, site: Site) {
		this.page = page;
		page.setDefaultTimeout(15_000);
		page.on("pageerror", (error) => this.errors.push(String(error)));
		page.on("console", (message) => {
			if (message.type() === "error") this.errors.push(message.text());
		});
		page.on("request", (request) => {
			const inside = [site.address, "blob:", "data:"].some((start) =>
				request.url().startsWith(start),
			);
			if (!inside) this.requestsElsewhere.push(request.url());
		});
	}

	static async open(browser: Browser, site: Site): Promise<FirefoxWorkbook> {
		const context = await browser.createBrowserContext();
		const page = await context.newPage();
		await page.setViewport({ width: 1366, height: 768 });
		const workbook = new FirefoxWorkbook(page, site);
		await page.goto(`${site.address}index.html#this-week`);
		await page.waitForSelector("#sheet h1");
		return workbook;
	}

	/** Goes to a sheet as its link in the rail does. */
	async goTo(file: string): Promise<void> {
		await this.page.evaluate((hash) => {
			location.hash = hash;
		}, `#${file}`);
		await this.page.waitForSelector(`a[data-sheet="${file}"][aria-current=page]`);
	}

	/** A cell of the grid; row and column count from 0, line numbers not counted. */
	async cell(row: number, column: number): Promise<ElementHandle> {
		const cells = await this.page.$$(`.grid .ht_master tbody tr:nth-child(${row + 1}) td`);
		const found = cells[column];
		if (!found) throw new Error(`no cell in row ${row}, column ${column}`);
		return found;
	}

	/** The text of the first element that fits. */
	text(selector: string): Promise<string> {
		return this.page.$eval(selector, (element) => element.textContent ?? "");
	}

	close(): Promise<void> {
		return this.page.browserContext().close();
	}
}

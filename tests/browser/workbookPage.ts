import type { Browser, BrowserContext, Page } from "playwright-core";
import type { Site } from "./site.ts";

/** The workbook in a browser, as a person handles it. Collects what must never happen. */
export class WorkbookPage {
	readonly page: Page;
	readonly context: BrowserContext;
	/** Requests to anywhere but the site itself. */
	readonly requestsElsewhere: string[] = [];
	/** Errors of scripts, and what the content security policy had to stop. */
	readonly errors: string[] = [];

	private constructor(context: BrowserContext, page: Page, site: Site) {
		this.context = context;
		this.page = page;
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

	static async open(
		browser: Browser,
		site: Site,
		options: Parameters<Browser["newContext"]>[0] = {},
		sheet = "this-week",
		prepare: (context: BrowserContext) => Promise<void> = withoutFilePickers,
	): Promise<WorkbookPage> {
		const context = await browser.newContext({
			viewport: { width: 1366, height: 768 },
			// What is kept for offline use has tests of its own and would slow the others down.
			serviceWorkers: "block",
			...options,
		});
		await prepare(context);
		const page = await context.newPage();
		page.setDefaultTimeout(8_000);
		const workbook = new WorkbookPage(context, page, site);
		await page.goto(`${site.address}index.html#${sheet}`);
		await page.locator("#sheet h1").waitFor();
		return workbook;
	}

	/** Every sheet that the rail leads to. */
	sheets(): Promise<string[]> {
		return this.page
			.locator("a[data-sheet]")
			.evaluateAll((links) => links.map((link) => (link as HTMLElement).dataset.sheet ?? ""));
	}

	/** Goes to a sheet by its link in the rail. */
	async goTo(file: string): Promise<void> {
		await this.page.evaluate((hash) => {
			location.hash = hash;
		}, `#${file}`);
		await this.page
			.locator(`a[data-sheet="${file}"][aria-current=page]`)
			.waitFor({ state: "attached" });
	}

	/** The sheet as the plain table has it: rows of texts, header first, without line numbers. */
	async table(): Promise<string[][]> {
		await this.drawn();
		return this.page
			.locator(".as-table table tr")
			.evaluateAll((rows) =>
				rows.map((row) =>
					[...row.querySelectorAll("th, td")]
						.filter((cell) => !cell.classList.contains("line-name"))
						.map((cell) => (cell.querySelector(".figure") ?? cell).textContent ?? ""),
				),
			);
	}

	/** Row of the plain table that begins with this text. */
	async row(first: string): Promise<string[]> {
		const found = (await this.table()).find((cells) => cells[0] === first);
		if (!found) throw new Error(`no row "${first}" on this sheet`);
		return found;
	}

	/** Clicks a cell of the grid; row and column count from 0, line numbers not counted. */
	async click(row: number, column: number): Promise<void> {
		const rowIn = (part: string) =>
			this.page.locator(`.grid ${part} tbody tr:nth-child(${row + 1})`);
		// A first column that stays in place lies over its own cells.
		const first = rowIn(":is(.ht_master, .ht_clone_left)").last().locator("td").first();
		await (column === 0 ? first : rowIn(".ht_master").locator("td").nth(column)).click();
	}

	/** Types a text into a cell of the grid and keeps it. */
	async type(row: number, column: number, text: string): Promise<void> {
		await this.click(row, column);
		await this.page.keyboard.type(text);
		await this.page.keyboard.press("Enter");
		await this.drawn();
	}

	/** Waits for what is drawn after the cells: the plain table, the problems, the margin. */
	async drawn(): Promise<void> {
		await this.page.locator("body[data-drawing]").waitFor({ state: "detached" });
	}

	/** Pastes plain text into the grid as a spreadsheet's clipboard would. */
	async paste(text: string): Promise<void> {
		await this.page.evaluate((words) => {
			const data = new DataTransfer();
			data.setData("text/plain", words);
			const target = document.activeElement ?? document.body;
			target.dispatchEvent(
				new ClipboardEvent("paste", { clipboardData: data, bubbles: true, cancelable: true }),
			);
		}, text);
		await this.drawn();
	}

	async headline(): Promise<string> {
		await this.drawn();
		return (await this.page.locator("#sheet h1").textContent()) ?? "";
	}

	close(): Promise<void> {
		return this.context.close();
	}
}

/** As in browsers that cannot write files: Save downloads, and Open asks through a file field. */
export async function withoutFilePickers(context: BrowserContext): Promise<void> {
	await context.addInitScript(() => {
		Reflect.deleteProperty(globalThis, "showSaveFilePicker");
		Reflect.deleteProperty(globalThis, "showOpenFilePicker");
	});
}

import { readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Browser, CDPSession, Page } from "playwright-core";
import { todayHere } from "../../src/cli/todayHere.ts";
import type { Site } from "../browser/site.ts";
import { WorkbookPage } from "../browser/workbookPage.ts";
import type { Chance } from "../fuzz/chance.ts";
import { planAgrees } from "./planAgrees.ts";

/** What the page takes up, after the engine's own tidying up. */
export interface Weight {
	readonly heapMb: number;
	readonly nodes: number;
	readonly listeners: number;
}

/** A workbook in a browser at work for hours: its page, its dice, and all that went wrong. */
export class Soak {
	readonly page: Page;
	readonly chance: Chance;
	readonly sheets: readonly string[];
	readonly troubles: string[] = [];
	/** The workbook as it was saved last. */
	saved: Uint8Array | undefined;
	saves = 0;
	#lastDone = "";
	readonly #workbook: WorkbookPage;
	readonly #tools: CDPSession;

	private constructor(
		workbook: WorkbookPage,
		chance: Chance,
		sheets: readonly string[],
		tools: CDPSession,
	) {
		this.#workbook = workbook;
		this.page = workbook.page;
		this.chance = chance;
		this.sheets = sheets;
		this.#tools = tools;
	}

	static async open(browser: Browser, site: Site, chance: Chance): Promise<Soak> {
		const workbook = await WorkbookPage.open(browser, site);
		workbook.page.setDefaultTimeout(30_000);
		const tools = await workbook.context.newCDPSession(workbook.page);
		await tools.send("Performance.enable");
		return new Soak(workbook, chance, await workbook.sheets(), tools);
	}

	/** Does one thing and looks whether the page is still well. */
	async step(name: string, act: () => Promise<boolean>): Promise<boolean> {
		this.#lastDone = name;
		try {
			if ((await this.page.locator("dialog[open]").count()) > 0)
				await this.page.keyboard.press("Escape");
			return await act();
		} catch (error) {
			this.trouble((error as Error).message.split("\n", 1)[0] ?? "");
			const path = join(tmpdir(), `basinbook-soak-${name.split(" ", 2).join("")}.png`);
			await this.page.screenshot({ path }).catch(() => {});
			return false;
		} finally {
			for (const error of this.#workbook.errors.splice(0)) this.trouble(error);
			for (const url of this.#workbook.requestsElsewhere.splice(0)) this.trouble(`request: ${url}`);
			const broken = await this.page
				.locator("#trouble > p.reason")
				.allTextContents()
				.catch((error: Error) => [error.message]);
			for (const words of broken) this.trouble(words);
		}
	}

	async goTo(file: string): Promise<boolean> {
		await this.#workbook.goTo(file);
		return true;
	}

	close(): Promise<void> {
		return this.#workbook.close();
	}

	/** Waits for what is drawn after the cells, as a person does who reads it. */
	drawn(): Promise<void> {
		return this.#workbook.drawn();
	}

	trouble(words: string): void {
		const trouble = `${this.#lastDone}: ${words}`;
		console.error(trouble);
		this.troubles.push(trouble);
	}

	/** Saves the workbook as a person does, and works out anew what is in the file. */
	async save(): Promise<void> {
		const download = this.page.waitForEvent("download");
		await this.page.keyboard.press("Control+s");
		const file = await download;
		this.saved = new Uint8Array(readFileSync(await file.path()));
		await file.delete();
		this.saves++;
		try {
			planAgrees(this.saved, todayHere());
		} catch (error) {
			writeFileSync(join(tmpdir(), `basinbook-soak-${this.saves}.zip`), this.saved);
			throw error;
		}
	}

	async weigh(): Promise<Weight> {
		await this.#tools.send("HeapProfiler.collectGarbage");
		const { metrics } = await this.#tools.send("Performance.getMetrics");
		const of = (name: string) => metrics.find((metric) => metric.name === name)?.value ?? 0;
		return {
			heapMb: of("JSHeapUsedSize") / 1e6,
			nodes: of("Nodes"),
			listeners: of("JSEventListeners"),
		};
	}

	/** The sheets as a reader has them, each as its plain table. */
	async shown(files: readonly string[]): Promise<Record<string, string[][]>> {
		// Whatever was printed last stands in the page until the printer has it.
		await this.page.evaluate(() => window.dispatchEvent(new Event("afterprint")));
		const all: Record<string, string[][]> = {};
		for (const file of files) {
			await this.goTo(file);
			all[file] = await this.#workbook.table();
		}
		return all;
	}
}

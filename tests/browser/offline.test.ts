import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { BrowserContext } from "playwright-core";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { keptFiles } from "../../src/build/keptFiles.ts";
import { writeServiceWorker } from "../../src/build/offline.ts";
import { browser, onStick } from "./fixture.ts";
import { builtSite, type Site, servedFolder } from "./site.ts";
import { WorkbookPage } from "./workbookPage.ts";

const OTHERS = ["guide.html", "methods.html", "sources.html"];

describe("without a network", { timeout: 60_000 }, () => {
	let folder: string;
	let site: Site;
	beforeEach(async () => {
		folder = mkdtempSync(join(tmpdir(), "basinbook served "));
		cpSync(builtSite(), folder, { recursive: true });
		site = await servedFolder(folder, "/maternity%20ward/");
	});
	afterEach(() => {
		site.close();
		rmSync(folder, { recursive: true });
	});

	/** Opens the workbook and waits until the browser has kept it, and answers this window too. */
	async function kept(prepare?: (context: BrowserContext) => Promise<void>): Promise<WorkbookPage> {
		const options = { serviceWorkers: "allow" } as const;
		const workbook = await WorkbookPage.open(browser, site, options, "this-week", prepare);
		await workbook.page.locator("#offline", { hasText: "Kept on this device" }).waitFor();
		const answers = () => workbook.page.evaluate(() => navigator.serviceWorker.controller !== null);
		await expect.poll(answers).toBe(true);
		expect(workbook.errors).toEqual([]);
		return workbook;
	}

	async function cutOff(workbook: WorkbookPage): Promise<void> {
		await workbook.context.setOffline(true);
		site.close();
	}

	/** Opens the page again; what it was still bringing when the network went is no fault of it. */
	async function reload({ page, errors }: WorkbookPage): Promise<void> {
		await page.reload();
		errors.splice(0);
		await page.locator("#sheet h1").waitFor();
	}

	/** The title of the sources page, as a person with an open window gets it. */
	async function sourcesTitle(workbook: WorkbookPage): Promise<string> {
		const page = await workbook.context.newPage();
		await page.goto(`${site.address}sources.html`);
		const title = await page.title();
		await page.close();
		return title;
	}

	/** Puts another version on the server: the same site with another title. */
	async function putNewVersion(): Promise<void> {
		const file = join(folder, "sources.html");
		const text = readFileSync(file, "utf8").replace(/<title>[^<]*/, "<title>Newer sources");
		writeFileSync(file, text);
		await writeServiceWorker(folder);
	}

	test("opens again, leads to every page, takes an entry and saves, in a folder of the server", async () => {
		const workbook = await kept();
		await cutOff(workbook);
		const { page } = workbook;
		await reload(workbook);
		await workbook.type(0, 2, "11");
		await expect.poll(async () => (await workbook.table())[1]?.[2]).toBe("11");
		const download = page.waitForEvent("download");
		await page.getByRole("button", { name: "Save workbook" }).click();
		expect((await download).suggestedFilename()).toMatch(/\.zip$/);
		for (const other of OTHERS) {
			await page.goto(site.address + other);
			await expect.poll(() => page.locator("h1").count(), { message: other }).toBe(1);
		}
		await page.goto(site.address);
		await page.locator("#sheet h1").waitFor();
		expect(workbook.errors).toEqual([]);
		expect(workbook.requestsElsewhere).toEqual([]);
		await page.goto(`${site.address}sources.html`);
		await page.locator(".foot a", { hasText: "Licences" }).click();
		await expect.poll(() => page.locator("body").textContent()).toContain("handsontable 6.2.2");
		await workbook.close();
	});

	test("a part that the first visit has not brought yet comes from what is kept", async () => {
		const workbook = await kept(async (context) => {
			await context.addInitScript(() => {
				globalThis.requestIdleCallback = () => 0;
			});
		});
		const { page } = workbook;
		const parts = () =>
			page.locator("script[src]").evaluateAll((all) => all.map((one) => one.getAttribute("src")));
		await cutOff(workbook);
		expect((await parts()).join()).not.toContain("monthPage");
		await workbook.goTo("month");
		await expect.poll(async () => (await parts()).join()).toContain("monthPage");
		expect(await page.locator("#told").textContent()).toBe("");
		expect(workbook.errors).toEqual([]);
		await workbook.close();
	});

	test("keeps every file of the site", async () => {
		const workbook = await kept();
		const addresses = await workbook.page.evaluate(async () => {
			const [name = ""] = await caches.keys();
			const requests = await (await caches.open(name)).keys();
			return requests.map(({ url }) => url);
		});
		const files = Object.keys(keptFiles(folder).files);
		expect(files).toContain("workbook.js");
		expect(addresses.map((address) => address.slice(site.address.length)).sort()).toEqual(files);
		await workbook.close();
	});

	test("a newer version is told of, leaves open windows alone and is there at the next start", async () => {
		const workbook = await kept();
		const neighbour = `${site.address}fr/#1`;
		const [older = ""] = await workbook.page.evaluate((name) => {
			return caches.keys().then((names) => caches.open(name).then(() => names));
		}, neighbour);
		const before = await sourcesTitle(workbook);
		await putNewVersion();
		await workbook.page.reload();
		await workbook.page.locator("#offline", { hasText: "from the next start" }).waitFor();
		expect(await sourcesTitle(workbook)).toBe(before);
		await workbook.page.close();
		await expect.poll(() => sourcesTitle(workbook), { timeout: 20_000 }).toBe("Newer sources");
		await cutOff(workbook);
		expect(await sourcesTitle(workbook)).toBe("Newer sources");
		const page = await workbook.context.newPage();
		await page.goto(`${site.address}sources.html`);
		const stores = () => page.evaluate(() => caches.keys());
		await expect.poll(stores).not.toContain(older);
		expect(await stores()).toContain(neighbour);
		await workbook.close();
	});

	test("a version that did not arrive as it was built is not kept; the one there stays", async () => {
		const workbook = await kept();
		const before = await sourcesTitle(workbook);
		await putNewVersion();
		writeFileSync(join(folder, "guide.html"), "half a gui");
		await workbook.page.reload();
		await workbook.page.evaluate(async () => {
			const registration = await navigator.serviceWorker.getRegistration();
			await registration?.update().catch(() => undefined);
		});
		await expect
			.poll(() =>
				workbook.page.evaluate(async () => {
					const registration = await navigator.serviceWorker.getRegistration();
					return registration?.installing?.state ?? "none";
				}),
			)
			.toBe("none");
		await cutOff(workbook);
		await workbook.page.reload();
		await expect
			.poll(() => workbook.page.locator("#offline").textContent())
			.toContain("Kept on this device");
		expect(await sourcesTitle(workbook)).toBe(before);
		await workbook.close();
	});

	test("can be put among the device's own programs", async () => {
		const workbook = await kept();
		const session = await workbook.context.newCDPSession(workbook.page);
		const { errors, data } = await session.send("Page.getAppManifest");
		expect(errors).toEqual([]);
		const { installabilityErrors } = await session.send("Page.getInstallabilityErrors");
		expect(installabilityErrors.filter(({ errorId }) => errorId !== "in-incognito")).toEqual([]);
		for (const { src, sizes } of JSON.parse(data ?? "{}").icons) {
			if (sizes === "any") continue;
			const size = await workbook.page.evaluate(async (address) => {
				const image = new Image();
				image.src = address;
				await image.decode();
				return `${image.naturalWidth}x${image.naturalHeight}`;
			}, src);
			expect(size, src).toBe(sizes);
		}
		await workbook.close();
	});
});

test("from a memory stick nothing is asked of the browser to keep", {
	timeout: 60_000,
}, async () => {
	const workbook = await WorkbookPage.open(browser, onStick, { serviceWorkers: "allow" });
	await expect.poll(() => workbook.page.locator("link[rel=manifest]").count()).toBe(0);
	await expect.poll(() => workbook.page.locator("#offline").textContent()).toBe("");
	expect(workbook.errors).toEqual([]);
	await workbook.close();
});

import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { BrowserContextOptions } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { type Elsewhere, elsewhere } from "./elsewhere.ts";
import { browser, onStick, served } from "./fixture.ts";
import { hostileFiles, hostileZip, PAYLOAD } from "./hostileDemo.ts";
import { builtSite } from "./site.ts";
import { WorkbookPage } from "./workbookPage.ts";

const PAGES = ["index.html", "guide.html", "methods.html", "sources.html"];
/** Chromium itself asks its maker about pages with fields, knowing only a hash of their form; no page can forbid it. */
const BROWSERS_OWN = "CONNECT content-autofill.googleapis.com:443";
/** Elements and attributes by which markup would act; the page itself has none of them. */
const ACTING = "img, iframe, object, embed, script:not([src]), [onerror], [onload], [onclick]";

test.each(PAGES)(
	"the policy of %s allows no script, style or address but the site's own",
	(page) => {
		const text = readFileSync(join(builtSite(), page), "utf8");
		const [, policy = ""] =
			/http-equiv="Content-Security-Policy" content="([^"]+)"/.exec(text) ?? [];
		const directives = Object.fromEntries(
			policy.split("; ").map((directive) => {
				const [name = "", ...sources] = directive.split(" ");
				return [name, sources.join(" ").replaceAll("&#39;", "'")];
			}),
		);
		expect(directives).toEqual({
			"default-src": "'none'",
			"script-src": "'self'",
			"style-src": expect.stringMatching(/^'self' 'sha256-[\w+/=]+'$/),
			"img-src": "'self'",
			"connect-src": "'none'",
			"manifest-src": "'self'",
			"worker-src": "'self'",
			"base-uri": "'none'",
			"form-action": "'none'",
		});
		expect(text.indexOf("Content-Security-Policy")).toBeLessThan(text.search(/<script|<link/));
	},
);

describe.each([
	["served", served],
	["on a memory stick", onStick],
] as const)("security, %s", { timeout: 90_000 }, (_, site) => {
	let outside: Elsewhere;
	beforeAll(async () => {
		outside = await elsewhere();
	}, 60_000);
	afterAll(async () => {
		outside?.close();
	});

	test("what is put into the page from outside is stopped", async () => {
		const workbook = await WorkbookPage.open(browser, site);
		const stopped = await workbook.page.evaluate(async (address) => {
			const violations = new Set<string>();
			document.addEventListener("securitypolicyviolation", (event) => {
				violations.add(
					`${event.effectiveDirective} ${event.blockedURI.replace(address, "ELSEWHERE")}`,
				);
			});
			const put = (tag: string, props: Record<string, string>) => {
				const element = document.createElement(tag);
				for (const [name, value] of Object.entries(props)) element.setAttribute(name, value);
				document.body.append(element);
				return element;
			};
			const script = document.createElement("script");
			script.textContent = "document.title = 'broken'";
			document.body.append(script);
			put("button", { onclick: "document.title = 'broken'" }).click();
			put("script", { src: `${address}/script.js` });
			put("img", { src: `${address}/picture.png` });
			put("link", { rel: "stylesheet", href: `${address}/style.css` });
			put("iframe", { src: `${address}/frame.html` });
			put("object", { data: `${address}/object.swf` });
			put("video", { src: `${address}/film.mp4` });
			put("base", { href: `${address}/` }).remove();
			put("p", { style: "color: red" });
			const form = put("form", { action: `${address}/form`, method: "post", target: "_blank" });
			(form as HTMLFormElement).submit();
			await fetch(`${address}/fetched`).catch(() => undefined);
			await fetch(location.href).catch(() => undefined);
			const connections: (() => unknown)[] = [
				() => navigator.sendBeacon(`${address}/beacon`, "secret"),
				() => new WebSocket(`${address.replace("http", "ws")}/socket`),
				() => new EventSource(`${address}/events`),
			];
			for (const connect of connections)
				try {
					connect();
				} catch {
					// Refused at once, as it should be.
				}
			// Later, because what runs on behalf of the test itself is exempt.
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
			await new Promise((waited) => setTimeout(waited, 1_000));
			return { violations: [...violations].sort(), evaluated, title: document.title };
		}, outside.address);
		expect(stopped.evaluated).toBe("EvalError");
		expect(stopped.title).not.toBe("broken");
		for (const expected of [
			"base-uri ELSEWHERE/",
			"connect-src ELSEWHERE/beacon",
			"connect-src ELSEWHERE/events",
			"connect-src ELSEWHERE/fetched",
			"form-action ELSEWHERE/form",
			"frame-src ELSEWHERE",
			"img-src ELSEWHERE/picture.png",
			"media-src ELSEWHERE/film.mp4",
			"object-src ELSEWHERE",
			"script-src eval",
			"script-src-attr inline",
			"script-src-elem ELSEWHERE/script.js",
			"script-src-elem inline",
			"style-src-attr inline",
			"style-src-elem ELSEWHERE/style.css",
		])
			expect(stopped.violations).toContain(expected);
		expect(
			stopped.violations.filter((violation) => violation.startsWith("connect-src")),
		).toHaveLength(5);
		expect(outside.asked).toEqual([]);
		await workbook.close();
	});

	test("names that carry markup are text on every sheet, in every picture, label and print, and nothing leaves for another host, in any state, and not from what keeps the site either", async () => {
		const options: BrowserContextOptions = {
			proxy: { server: outside.address, bypass: "127.0.0.1" },
			serviceWorkers: "allow",
		};
		const workbook = await WorkbookPage.open(browser, site, options);
		const { page } = workbook;
		if (site.address.startsWith("http"))
			await page.locator("#offline", { hasText: "Kept on this device" }).waitFor();
		await dropZip(workbook, hostileZip());
		await page.locator("#told p", { hasText: "opened" }).waitFor();
		await expect.poll(() => page.locator("#trouble").textContent()).toContain(PAYLOAD);
		await page.evaluate(() => {
			window.print = () => {};
		});
		let seen = 0;
		let seenOnPaper = 0;
		for (const sheet of await workbook.sheets()) {
			await workbook.goTo(sheet);
			if (await page.locator(".grid td").count()) await workbook.click(0, 1);
			expect(await acting(workbook), sheet).toBe(0);
			seen += Number((await text(workbook, "#sheet")).includes(PAYLOAD));
			const buttons = page.locator("#sheet button:visible", { hasText: /^Print/ });
			for (let at = 0; at < (await buttons.count()); at++) {
				if (await buttons.nth(at).isDisabled()) continue;
				await buttons.nth(at).click();
				expect(await acting(workbook), `${sheet}, printed`).toBe(0);
				seenOnPaper += Number((await text(workbook, "#paper")).includes(PAYLOAD));
				await page.evaluate(() => window.dispatchEvent(new Event("afterprint")));
			}
		}
		// Where the payload is nowhere to be seen, the test has looked at nothing.
		expect(seen).toBeGreaterThan(15);
		expect(seenOnPaper).toBeGreaterThan(3);
		expect(await page.title()).not.toBe("broken");
		expect(workbook.errors).toEqual([]);
		expect(workbook.requestsElsewhere).toEqual([]);
		const download = page.waitForEvent("download");
		await page.locator("#save-workbook").click();
		await download;
		for (const other of PAGES) await page.goto(site.address + other);
		await page.reload();
		expect(outside.asked.filter((asked) => asked !== BROWSERS_OWN)).toEqual([]);
		// The proxy does stand in the way of every other host.
		await page.goto("http://elsewhere.invalid/asked").catch(() => undefined);
		expect(outside.asked).toContain("GET http://elsewhere.invalid/asked");
		await workbook.close();
	});

	test("rich text pasted into the grid comes in as its plain words", async () => {
		const workbook = await WorkbookPage.open(browser, site, {}, "kits.csv");
		await workbook.click(0, 4);
		await workbook.page.evaluate((payload) => {
			const clipboardData = new DataTransfer();
			clipboardData.setData("text/html", `<table><tr><td>${payload}</td></tr></table>`);
			clipboardData.setData("text/plain", payload);
			const paste = new ClipboardEvent("paste", { clipboardData, bubbles: true, cancelable: true });
			(document.activeElement ?? document.body).dispatchEvent(paste);
		}, PAYLOAD);
		expect((await workbook.table())[1]?.[4]).toBe(PAYLOAD);
		expect(await acting(workbook)).toBe(0);
		expect(await workbook.page.title()).not.toBe("broken");
		expect(workbook.errors).toEqual([]);
		await workbook.close();
	});

	async function dropZip(workbook: WorkbookPage, zip: Uint8Array): Promise<void> {
		await workbook.page.evaluate(
			({ bytes, name }) => {
				const dataTransfer = new DataTransfer();
				dataTransfer.items.add(new File([new Uint8Array(bytes)], name));
				const drop = new DragEvent("drop", { dataTransfer, bubbles: true, cancelable: true });
				document.body.dispatchEvent(drop);
			},
			{ bytes: [...zip], name: `${PAYLOAD}.zip` },
		);
	}
});

test("the hostile demo carries markup in every file that has names", () => {
	const files = hostileFiles();
	const plain = Object.keys(files).filter((name) => !files[name]?.includes(PAYLOAD));
	expect(plain.sort()).toEqual(["hours.csv", "past-plans.csv", "records.csv"]);
});

/** How many elements of the page could act. */
function acting({ page }: WorkbookPage): Promise<number> {
	return page.locator(ACTING).count();
}

async function text({ page }: WorkbookPage, selector: string): Promise<string> {
	return (await page.locator(selector).textContent()) ?? "";
}

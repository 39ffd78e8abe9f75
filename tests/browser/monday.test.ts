import { expect, test } from "vitest";
import { axeViolations } from "./axeViolations.ts";
import { browser, onStick as site } from "./fixture.ts";
import { measured } from "./measured.ts";
import { readPdf } from "./paper.ts";
import { WorkbookPage } from "./workbookPage.ts";

const MOST_ACTS = 40;

/** The Monday after the demo's week. */
function open(options = {}) {
	return WorkbookPage.open(browser, site, options, "this-week", async (context) => {
		await context.clock.setFixedTime(new Date("2027-03-08T08:10:00"));
		await context.addInitScript(() => {
			Reflect.deleteProperty(globalThis, "showSaveFilePicker");
			globalThis.print = () => document.body.setAttribute("data-printed", "");
		});
	});
}

/** Counts what a person does: a button, a tick, a field filled in. */
function acting({ page }: WorkbookPage) {
	let acts = 0;
	return {
		count: () => acts,
		add: () => {
			acts++;
		},
		async click(name: string) {
			acts++;
			await page.getByRole("button", { name, exact: true }).click();
		},
		async fill(label: string | RegExp, text: string, nth = 0) {
			acts++;
			await page.getByLabel(label).nth(nth).fill(text);
		},
	};
}

test("what is wrong with a count is said beside it, in sight", { timeout: 60_000 }, async () => {
	const workbook = await open();
	const { page } = workbook;
	await workbook.goTo("monday");
	const field = page.getByLabel(/^Counted: Gauze swab/);
	await field.fill("-5");
	await page.getByRole("button", { name: "Keep these counts" }).click();
	const reason = page.locator("td:has(input:focus) .reason");
	await expect.poll(() => reason.textContent()).toContain("“-5” was found");
	expect(await reason.evaluate((it) => it.getBoundingClientRect().bottom < innerHeight)).toBe(true);
	const used = page.getByLabel("Kits used, Tue 2 Mar");
	await used.fill("many");
	await page.getByRole("button", { name: "Keep these days" }).click();
	await expect.poll(() => reason.textContent()).toContain("“many” was found");
	expect(await used.evaluate((it) => it === document.activeElement)).toBe(true);
	expect(workbook.errors).toEqual([]);
	await workbook.close();
});

test("one line is one, and an order whose day has passed was due", {
	timeout: 60_000,
}, async () => {
	const workbook = await open();
	const { page } = workbook;
	await workbook.goTo("today");
	await page.getByRole("button", { name: "A kit was used", exact: true }).click();
	await page.getByLabel("When", { exact: true }).fill("2027-03-02T04:10");
	await page.getByRole("button", { name: "Write it down" }).click();
	await workbook.goTo("monday");
	await page.getByText("Written down of these days: 1 line of kits used, 0 rounds done.").waitFor();
	const orders = page.getByLabel("Which order");
	await expect
		.poll(() => orders.textContent())
		.toBe("Examination gloves, 2 packs: was due Wed 3 Mar");
	expect(workbook.errors).toEqual([]);
	await workbook.close();
});

test("from last week to all papers of this one in at most 40 acts, and its place is kept", {
	timeout: 90_000,
}, async () => {
	const workbook = await open();
	const { page } = workbook;
	const monday = acting(workbook);
	monday.add();
	await page.locator(".start summary").click();
	await monday.click("Start from last week");
	await page.locator(`a[data-sheet="monday"][aria-current=page]`).waitFor();
	await expect.poll(() => workbook.headline()).toBe("Monday: prepare the week from Mon 8 Mar");

	const births = page.getByLabel(/^Births, /);
	await expect.poll(() => births.count()).toBe(7);
	for (let day = 0; day < 7; day++) await monday.fill(/^Births, /, String(4 + (day % 3)), day);
	await monday.click("Keep these days");
	await expect
		.poll(() => workbook.headline())
		.toBe("The week from Mon 8 Mar: 1 of 7 steps are done");

	const lots = page.getByLabel(/^Counted: /);
	const count = await lots.count();
	for (let lot = 0; lot < count; lot++) await monday.fill(/^Counted: /, "10", lot);
	await monday.click("Keep these counts");
	await page.getByText(`${count} lots counted. Differing:`).waitFor();

	await monday.fill("Lot on the box or bottle", "X-77");
	await monday.fill("Expires on", "2029-12-31");
	await monday.click("Received");
	await page.getByText(/^Examination gloves, lot X-77: /).waitFor();
	await page.getByText("No order is on the way.").waitFor();

	// Goes away and comes back: what is done is still ticked.
	await workbook.goTo("order.csv");
	await workbook.goTo("monday");
	await page.getByRole("checkbox", { name: "Count the store" }).waitFor();
	expect(await page.getByRole("checkbox", { name: "Count the store" }).isChecked()).toBe(true);

	const lookedAt = async (title: string) => {
		monday.add();
		const step = page.locator(".monday-step", { hasText: title });
		await step.getByRole("button", { name: "Looked at" }).click();
	};
	await lookedAt("Orders on the way");
	await lookedAt("Usage to take over");
	await monday.click("Move on to Mon 8 Mar");
	await page.getByText("Last week and this one").waitFor();
	await lookedAt("What the new plan changes");
	await monday.click("Print these papers");
	await page.locator("body[data-printed]").waitFor();
	const { text, pages } = readPdf(await page.pdf({ preferCSSPageSize: true }));
	for (const words of [
		"Mon 8 Mar 2027 to Sun 14 Mar 2027",
		"Work sheet",
		"Labels, sheet 1 of",
		"Boiled water and fires",
		"Order form",
	])
		expect(text).toContain(words);
	// The plan is on one page, and its cautions are there once.
	expect(pages[0]).toContain("When no kit is ready");
	expect(pages[0]?.match(/never in the same basin/g)).toHaveLength(1);
	expect(pages[1]).toContain("Work sheet");
	expect(pages.length).toBeGreaterThan(10);
	await expect.poll(() => workbook.headline()).toBe("The week from Mon 8 Mar is prepared");
	expect(monday.count()).toBeLessThanOrEqual(MOST_ACTS);
	expect(measured("Monday, from last week to all papers")).toBe(`${monday.count()} acts`);

	await page.getByRole("button", { name: "Begin the next week's routine" }).click();
	await expect.poll(() => workbook.headline()).toBe("Monday: prepare the week from Mon 15 Mar");
	await page.locator("#undo").click();
	await expect.poll(() => workbook.headline()).toBe("The week from Mon 8 Mar is prepared");
	expect(workbook.errors).toEqual([]);
	await workbook.close();
});

test.each([
	["wide", {}],
	["on a phone in the dark", { viewport: { width: 360, height: 740 }, colorScheme: "dark" }],
	["at 200 %", { viewport: { width: 683, height: 384 } }],
] as const)(
	"clean for axe and nothing beside the screen, %s",
	{ timeout: 60_000 },
	async (_words, options) => {
		const workbook = await open({ ...options, bypassCSP: true });
		const { page } = workbook;
		await workbook.goTo("monday");
		await page.getByRole("checkbox", { name: "Count the store" }).waitFor();
		expect(await axeViolations(workbook)).toEqual([]);
		await page.getByRole("button", { name: "Move on to Mon 8 Mar" }).click();
		await page.getByText("Last week and this one").waitFor();
		expect(await axeViolations(workbook)).toEqual([]);
		const isWide = await page.evaluate(
			() => document.documentElement.scrollWidth > window.innerWidth,
		);
		expect(isWide).toBe(false);
		await workbook.close();
	},
);

test("what cannot be entered is named beside its table, and nothing is written", {
	timeout: 60_000,
}, async () => {
	const workbook = await open();
	const { page } = workbook;
	await workbook.goTo("monday");
	await page.getByLabel("Births, Tue 2 Mar").fill("many");
	await page.getByRole("button", { name: "Keep these days" }).click();
	await page.getByText(/“many” was found/).waitFor();
	await page
		.getByLabel(/^Counted: /)
		.nth(2)
		.fill("some");
	await page.getByRole("button", { name: "Keep these counts" }).click();
	await page.getByText(/“some” was found/).waitFor();
	expect(
		await page
			.getByLabel(/^Counted: /)
			.nth(2)
			.getAttribute("aria-invalid"),
	).toBe("true");
	await expect.poll(() => workbook.headline()).toBe("Monday: prepare the week from Mon 8 Mar");
	await workbook.close();
});

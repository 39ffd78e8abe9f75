import { expect, test } from "vitest";
import { open, phone } from "./atBench.ts";
import { measured } from "./measured.ts";
import { readPdf } from "./paper.ts";
import type { WorkbookPage } from "./workbookPage.ts";

/** Counts what a person does: taps and fields filled in. */
function acting({ page }: WorkbookPage) {
	let acts = 0;
	return {
		count: () => acts,
		tap: async (name: string | RegExp) => {
			acts++;
			await page.getByRole("button", { name, exact: typeof name === "string" }).click();
		},
		choose: async (name: string) => {
			acts++;
			await page.getByRole("checkbox", { name }).click();
		},
		fill: async (label: string, text: string) => {
			acts++;
			await page.getByRole("dialog").getByLabel(label, { exact: true }).fill(text);
		},
	};
}

/** How the page says that each kit stands. */
async function kits({ page }: WorkbookPage): Promise<string[]> {
	const lines = await page.locator(".kits-now li > div").allTextContents();
	return lines.map((line) => line.replace(/\s+/g, " "));
}

test("a kit from its use to the next baby, on a phone: two taps, six acts at most, one screen", {
	timeout: 60_000,
}, async () => {
	const workbook = await open(phone);
	const { page } = workbook;
	await expect.poll(() => workbook.headline()).toBe("3 kits are ready: use K1 next");

	const use = acting(workbook);
	await use.tap("Kit K1 was used");
	await use.tap("Write it down");
	expect(use.count()).toBe(2);
	expect(measured("a kit was used")).toBe(`${use.count()} taps`);
	await expect.poll(() => workbook.headline()).toBe("2 kits are ready: use K2 next");
	await page.getByText("Kit K1 was used: Mon 1 Mar 2027, 09:40.").waitFor();

	const round = acting(workbook);
	await round.tap("Round done");
	await round.fill("Soak in", "07:50");
	await round.fill("Soak out", "08:10");
	await round.fill("Done by", "Ama");
	await round.tap("Write this round down");
	expect(round.count()).toBeLessThanOrEqual(6);
	expect(measured("a round was done")).toBe(`${round.count()} acts`);
	await expect
		.poll(() => kits(workbook))
		.toContainEqual(expect.stringMatching(/^K4 .*not yet tested after its round/));

	const check = acting(workbook);
	await check.tap("Test kit K4");
	const all = page.getByRole("button", { name: /^All tests passed/ });
	// The last tests are under the edge of this screen: nobody passes what was not looked at.
	await expect.poll(() => all.getAttribute("aria-disabled")).toBe("true");
	await all.dispatchEvent("click");
	await expect
		.poll(() => page.locator(".bench-form > .reason").textContent())
		.toContain("Look at every test");
	await expect.poll(() => page.locator(".bench-test input:checked").count()).toBe(0);
	for (const one of await page.locator(".bench-test").all()) await one.scrollIntoViewIfNeeded();
	await expect.poll(() => all.getAttribute("aria-disabled")).toBe("false");
	await all.click();
	expect(
		await page
			.locator("#store-bench-checked_by-wrong, #store-bench-checked-by-wrong")
			.textContent(),
	).toBe("Who checked it?");
	await check.fill("Checked by", "Esi");
	await all.click();
	await expect.poll(() => workbook.headline()).toBe("3 kits are ready: use K2 next");

	await workbook.goTo("checks.csv");
	expect((await workbook.table()).at(-2)?.slice(0, 4)).toEqual([
		"2027-03-01 09:40",
		"K4",
		"12",
		"yes",
	]);
	await workbook.goTo("uses.csv");
	expect((await workbook.table()).at(-2)?.slice(0, 3)).toEqual(["2027-03-01 09:40", "K1", "used"]);
	expect(workbook.errors).toEqual([]);
	await workbook.close();
});

test("a failure is one tap: the kit is set apart with it, and it can be taken back", {
	timeout: 60_000,
}, async () => {
	const workbook = await open();
	const { page } = workbook;
	await page.getByRole("button", { name: "Kit tested", exact: true }).click();
	const dialog = page.getByRole("dialog");
	await dialog.getByLabel("Kit", { exact: true }).selectOption("K2");
	const failed = (test: string) =>
		page.getByRole("group", { name: test }).getByRole("radio", { name: /No$/ });
	await failed("Seal holds").click();
	await expect
		.poll(() => page.locator(".bench-said").textContent())
		.toContain("Kit K2 is set apart");
	await failed("Clean").click();
	await page.getByRole("button", { name: "Close", exact: true }).click();
	await expect.poll(() => workbook.headline()).toBe("2 kits are ready: use K1 next");
	expect(await kits(workbook)).toContainEqual(
		expect.stringMatching(/^K2 .*the seal does not hold/),
	);
	// The second finding of the same check went into its line: two steps back, and all is as before.
	await page.getByRole("button", { name: "Take it back" }).click();
	await page.locator("#undo").click();
	await expect.poll(() => workbook.headline()).toBe("3 kits are ready: use K1 next");
	await workbook.close();
});

test("a need that found no kit ready says first what to do, as the unit wrote it once", {
	timeout: 60_000,
}, async () => {
	const workbook = await open();
	const { page } = workbook;
	await page.getByRole("button", { name: "Write it once, in the settings" }).click();
	await page.locator(`a[data-sheet="unit.csv"][aria-current=page]`).waitFor();
	await page.keyboard.type("Theatre, extension 12");
	await page.keyboard.press("Enter");
	await workbook.goTo("today");
	await page.getByRole("button", { name: "No kit was ready", exact: true }).click();
	await expect
		.poll(() => page.getByRole("dialog").textContent())
		.toContain("Theatre, extension 12");
	await page.getByRole("button", { name: "Write it down" }).click();
	await page.getByText("A kit was needed and none was ready: Mon 1 Mar 2027, 09:40.").waitFor();
	await workbook.goTo("this-week");
	const { text } = readPdf(await page.pdf({ preferCSSPageSize: true }));
	expect(text).toContain("Theatre, extension 12");
	await workbook.close();
});

test("by keyboard alone: a used kit is written down, and the focus comes back", {
	timeout: 60_000,
}, async () => {
	const workbook = await open();
	const { page } = workbook;
	const button = page.getByRole("button", { name: "Kit K1 was used", exact: true });
	await button.focus();
	await page.keyboard.press("Enter");
	await page.getByRole("dialog").waitFor();
	await page.keyboard.press("Escape");
	await expect.poll(() => button.evaluate((it) => it === document.activeElement)).toBe(true);
	await page.keyboard.press("Enter");
	await page.getByRole("dialog").waitFor();
	await page.keyboard.press("Enter");
	await expect.poll(() => workbook.headline()).toBe("2 kits are ready: use K2 next");
	await page.keyboard.press("Control+z");
	await expect.poll(() => workbook.headline()).toBe("3 kits are ready: use K1 next");
	await workbook.close();
});

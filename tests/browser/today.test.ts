import { expect, test } from "vitest";
import { axeViolations } from "./axeViolations.ts";
import { browser, onStick as site } from "./fixture.ts";
import { measured } from "./measured.ts";
import { readPdf } from "./paper.ts";
import { WorkbookPage } from "./workbookPage.ts";

const phone = { viewport: { width: 360, height: 740 }, hasTouch: true, isMobile: true };

/** A person at the bench on the first day of the demo's plan, by a clock that is set for it. */
async function open(options = {}, sheet = "today", clock = "2027-03-01T09:40:00") {
	return WorkbookPage.open(browser, site, options, sheet, async (context) => {
		await context.clock.setFixedTime(new Date(clock));
	});
}

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

test("by the clock: the stove of the evening before, what is late, what runs, and a day of one's own", {
	timeout: 60_000,
}, async () => {
	const evening = await open({}, "today", "2027-02-28T19:00:00");
	const acts = (workbook: WorkbookPage) => workbook.page.locator(".act").allTextContents();
	expect((await acts(evening))[0]).toMatch(
		/^22:56 at the latestLight the stove for Morning, Mon 1 Mar/,
	);
	await evening.page.locator("#today-day").selectOption("2027-03-03");
	await expect.poll(async () => (await acts(evening)).join()).toContain("Wed 3 Mar");
	await expect
		.poll(() => evening.page.locator(".about").textContent())
		.toContain("Wed 3 Mar 2027 is shown");
	await evening.close();

	const morning = await open({}, "today", "2027-03-01T07:20:00");
	await expect
		.poll(() => morning.page.locator(".act.late").textContent())
		.toContain("for Afternoon");
	await expect
		.poll(() => morning.page.locator(".act.runs").textContent())
		.toContain("Kit K4 waits.");
	await morning.close();

	const over = await open({}, "today", "2027-03-09T07:20:00");
	await expect
		.poll(() => over.page.locator(".about").textContent())
		.toContain("The plan ended on Sun 7 Mar 2027");
	await over.close();

	const wrong = await open({}, "today", "2010-01-01T00:10:00");
	await expect.poll(() => wrong.page.locator(".about").textContent()).toContain("set the clock");
	await expect.poll(() => wrong.headline()).toBe("3 kits are ready: use K1 next");
	await wrong.close();
});

test.each([
	["wide", {}],
	["on a phone in the dark", { ...phone, colorScheme: "dark" }],
	["at 200 %", { viewport: { width: 683, height: 384 } }],
] as const)(
	"clean for axe and nothing beside the screen, %s; its paper is one page",
	{
		timeout: 60_000,
	},
	async (_words, options) => {
		const workbook = await open({ ...options, bypassCSP: true });
		const { page } = workbook;
		const isWide = () =>
			page.evaluate(() => document.documentElement.scrollWidth > window.innerWidth);
		expect(await axeViolations(workbook)).toEqual([]);
		expect(await isWide()).toBe(false);
		for (const name of [
			"Kit K1 was used",
			"No kit was ready",
			"Round done",
			"Kit tested",
			"Received",
		]) {
			await page.getByRole("button", { name, exact: true }).click();
			await page.getByRole("dialog").waitFor();
			expect([name, await axeViolations(workbook)]).toEqual([name, []]);
			expect([name, await isWide()]).toEqual([name, false]);
			await page.keyboard.press("Escape");
			await page.getByRole("dialog").waitFor({ state: "detached" });
		}
		expect(readPdf(await page.pdf({ preferCSSPageSize: true })).pages).toHaveLength(1);
		await workbook.close();
	},
);

test("a log for the bench prints with the columns of the sheets", { timeout: 60_000 }, async () => {
	const workbook = await open();
	const { page } = workbook;
	await page.evaluate(() => {
		window.print = () => document.body.setAttribute("data-printed", "");
	});
	await page.getByRole("button", { name: "Print a log for the bench" }).click();
	await page.locator("body[data-printed]").waitFor();
	const heads = await page
		.locator("#paper thead tr")
		.evaluateAll((rows) =>
			rows.map((row) => [...row.children].map((cell) => cell.firstChild?.textContent)),
		);
	expect(heads[0]).toEqual(["When", "Kit", "What happened", "Written by", "Note"]);
	expect(heads[1]?.slice(0, 4)).toEqual(["Date", "Start", "Ended", "Kits"]);
	expect(heads[1]).toHaveLength(14);
	expect(readPdf(await page.pdf({ preferCSSPageSize: true })).pages).toHaveLength(1);
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

import { describe, expect, test } from "vitest";
import { dropDemo } from "./droppedDemo.ts";
import { browser, onStick, served } from "./fixture.ts";
import { type Printed, printed as print, readPdf } from "./paper.ts";
import { WorkbookPage } from "./workbookPage.ts";

const A4 = { width: 596, height: 843 };
const LETTER = { width: 612, height: 792 };

describe.each([
	["served", served],
	["on a memory stick", onStick],
] as const)("what is mixed and boiled, %s", { timeout: 60_000 }, (_, site) => {
	const open = (sheet: string) => WorkbookPage.open(browser, site, {}, sheet);

	test("the pictures are there, each with a name and a sentence", async () => {
		const workbook = await open("strength.csv");
		for (const [sheet, name, sentence] of [
			[
				"strength.csv",
				/Strength left in every lot/,
				/B-0211, ends first: last usable day Sat 17 Jul/,
			],
			["boiling.csv", /Temperature of the boiled water/, /10 L takes 7 h 15 min to cool/],
			["product-compare.csv", /Cost of each product/, /Cheapest: Chlorine powder 70 %/],
		] as const) {
			await workbook.goTo(sheet);
			await workbook.page.getByRole("img", { name }).waitFor();
			expect(await workbook.page.locator("figcaption").last().textContent(), sheet).toMatch(
				sentence,
			);
		}
		expect(workbook.errors).toEqual([]);
		expect(workbook.requestsElsewhere).toEqual([]);
		await workbook.close();
	});

	test("the instruction follows the container, by keyboard alone, with the cautions beside it", async () => {
		const workbook = await open("mixing.csv");
		const steps = workbook.page.locator(".mix-steps");
		await expect
			.poll(() => steps.textContent())
			.toMatch(/4\.67\sL of cold water.*830\smL of Liquid bleach/);
		await workbook.page.getByLabel("Make up to").focus();
		for (let size = 0; size < 5; size++) await workbook.page.keyboard.press("ArrowDown");
		await expect
			.poll(() => steps.textContent())
			.toMatch(/8\.49\sL of cold water.*1\s510\smL.*lot B-0211.*makes 10\sL at 0\.511/);
		const instruction = await workbook.page.locator(".mix").boundingBox();
		const cautions = await workbook.page.locator(".over .cautions").boundingBox();
		expect(cautions?.y).toBe(instruction?.y);
		await expect
			.poll(() => workbook.page.locator(".over .cautions").textContent())
			.toMatch(/vinegar/);
		await workbook.close();
	});

	test("the instruction on the screen is the row of the grid", async () => {
		const workbook = await open("mixing-days.csv");
		const [, first = []] = await workbook.table();
		const text = (await workbook.page.locator(".mix-steps").textContent()) ?? "";
		for (const at of [3, 5]) expect(text.replace(/\s/g, " ")).toContain(String(first[at]));
		await expect.poll(() => workbook.headline()).toContain("830");
		await workbook.close();
	});
});

describe("what is mixed and boiled", { timeout: 60_000 }, () => {
	const site = served;
	const open = (sheet: string) => WorkbookPage.open(browser, site, {}, sheet);

	test("a reading that is entered stands in the picture with its error, and is flagged where it is off", async () => {
		const workbook = await open("strength-readings.csv");
		await workbook.click(0, 0);
		await workbook.paste("Liquid bleach 3.5 %\tB-0211\t2027-02-20\t1.5\ttitration\tpale\r\n");
		await workbook.goTo("strength.csv");
		await expect.poll(() => workbook.page.locator(".reading-dot circle").count()).toBe(1);
		await expect.poll(() => workbook.page.locator(".reading-error line").count()).toBe(1);
		const row = (await workbook.table()).find((cells) => cells[1] === "B-0211") ?? [];
		expect(row).toContain("1.50");
		expect(row.at(-1)).toContain("differs from the computed strength");
		await expect
			.poll(() => workbook.page.locator("figcaption").textContent())
			.toContain("Dots are readings");
		await workbook.close();
	});

	test("a room hotter than the water wanted is a problem, and the picture shows that it never cools", async () => {
		const workbook = await open("boiling.csv");
		await dropDemo(workbook, { settings: { room_c: "40" } });
		const caption = workbook.page.locator("figcaption");
		await expect.poll(() => caption.textContent()).toMatch(/never cools to 37 °C by itself/);
		await expect
			.poll(() => workbook.page.locator(".boil .next").textContent())
			.toMatch(/no time to light the stove yet\. Water does not cool to 37 °C/);
		await workbook.goTo("unit.csv");
		await expect
			.poll(() => workbook.page.locator(".problem-list.error").textContent())
			.toMatch(/does not cool to 37 °C in a room of 40 °C/);
		await workbook.close();
	});

	test("a heat that is not given is only advice: the times go by an estimate, and say so", async () => {
		const workbook = await open("boiling.csv");
		await dropDemo(workbook, { settings: { heat_kw: "", fuel: "electric" } });
		await expect
			.poll(() => workbook.page.locator(".boil .next").textContent())
			.toMatch(/light the stove by 0\d:\d\d the same day/);
		await workbook.page.getByRole("img", { name: /Temperature of the boiled water/ }).waitFor();
		await workbook.goTo("this-week");
		await expect.poll(() => workbook.headline()).toContain("kits are enough");
		await expect.poll(() => workbook.page.locator(".problem-list.error").count()).toBe(0);
		await expect
			.poll(() => workbook.page.locator(".problem-list.advice").textContent())
			.toContain("go by an estimate for the fuel");
		await workbook.close();
	});

	test("stove and pots stand in a picture; too few pots are a problem with what would help", async () => {
		const workbook = await open("boiling.csv");
		const picture = workbook.page.getByRole("img", {
			name: /Stove and pots through the first day/,
		});
		await picture.waitFor();
		await expect.poll(() => picture.locator(".bar-pot rect").count()).toBe(6);
		await dropDemo(workbook, { settings: { pots: "1" } });
		await expect
			.poll(() => workbook.page.locator(".boil .reason").textContent())
			.toMatch(/cannot be cool in time\. .*Buckets of .*The fewest pots that would do: \d/);
		await workbook.close();
	});

	test("the unit's own two readings of a pot replace the estimate, and say so", async () => {
		const workbook = await open("boiling.csv");
		const readings = { cooling_first_c: "90", cooling_second_c: "40", cooling_hours: "1" };
		await dropDemo(workbook, { settings: readings });
		await expect
			.poll(() => workbook.page.locator("figcaption").last().textContent())
			.toMatch(/from your own two readings/);
		await expect
			.poll(() => workbook.page.locator(".boil .next").textContent())
			.not.toContain("22:56");
		await workbook.close();
	});

	test("water says from which source, and what none of them gives; the ward's solution stays apart", async () => {
		const workbook = await open("water.csv");
		await dropDemo(workbook, {
			sheets: {
				"water-sources.csv": "source,litres_per_day,note\nTap,60,\nRain tank,20,\n",
				"ward-solution.csv": "use,litres_per_day,strength_pct,note\nFloors,10,0.1,\n",
			},
		});
		const said = workbook.page.locator(".said");
		await expect
			.poll(() => said.textContent())
			.toMatch(/Tap \(60 L\), Rain tank \(20 L\), not covered/);
		await expect
			.poll(() => workbook.headline())
			.toMatch(/^Fetch \d+ L on Mon 1 Mar: \d+ containers$/);
		await workbook.goTo("ward-use.csv");
		await expect.poll(() => workbook.headline()).toMatch(/^10 L a day of other solution/);
		await expect.poll(() => said.textContent()).toContain("kept apart from the kits' figures");
		await workbook.close();
	});

	test("every disagreement leads to where this unit decides it", async () => {
		const workbook = await open("disagreements");
		const { page } = workbook;
		await expect.poll(() => page.locator(".topic").count()).toBeGreaterThan(10);
		const boil = page.locator(".topic", { hasText: "keep water at the boil" });
		await expect
			.poll(() => boil.textContent())
			.toMatch(/seen.*Others: .*EPA says 3 above.*20 minutes.*here: 1 min/);
		await boil.getByRole("button", { name: "Go to the setting" }).click();
		await page
			.locator(`a[data-sheet="unit.csv"][aria-current=page]`)
			.waitFor({ state: "attached" });
		await expect
			.poll(() => page.locator(".entry-label").textContent())
			.toBe("Keep at the boil for");
		await workbook.close();
	});

	describe.each([
		["A4", A4],
		["Letter", LETTER],
	] as const)("on paper, %s", (format, size) => {
		test("the mixing sheet is one upright page: the act, the cautions, every day, room to write", async () => {
			const workbook = await open("mixing.csv");
			const printed: Printed = await print(workbook.page, "Print the mixing sheet", format);
			expect(printed).toMatchObject(size);
			expect(printed.pages).toHaveLength(1);
			for (const words of [
				/Willow Ford/,
				/Basinbook \d/,
				/Never let chlorine meet vinegar/,
				/Put\s+830\s*mL\s+of Liquid bleach 3\.5 %, lot B-0211/,
				/Sun 7 Mar/,
				/Discard by/,
				/Checked by/,
				/not a validated process/,
			])
				expect(printed.pages[0]).toMatch(words);
			await workbook.close();
		});

		test("the wall tables are a page for each product, valid for the lots named and until a day", async () => {
			const workbook = await open("wall-table.csv");
			const printed: Printed = await print(workbook.page, "Print the wall tables", format);
			expect(printed).toMatchObject(size);
			expect(printed.pages).toHaveLength(3);
			const [bleach = "", powder = "", tablets = ""] = printed.pages;
			expect(bleach).toMatch(
				/For lot B-0211 – use this one first[\s\S]*only until Wed 31 Mar 2027/,
			);
			expect(bleach).toMatch(/5\s*L\s+about 4\s*L\s+770\s*mL\s+the 5\s*L mark\s+0\.510 %/);
			expect(powder).toMatch(/For lot P-17/);
			expect(tablets).toMatch(
				/Exact for[\s\S]*5\s*L\s+5\s*L\s+17\s*tablets\s+0\.510 %\s+5\.01\s*L/,
			);
			for (const page of printed.pages) {
				expect(page).toMatch(/Never let chlorine meet vinegar/);
				expect(page).toMatch(/Checked by/);
			}
			await workbook.close();
		});

		test("the boiling sheet is one upright page with every fire under its day", async () => {
			const workbook = await open("boiling.csv");
			const printed: Printed = await print(workbook.page, "Print the boiling sheet", format);
			expect(printed).toMatchObject(size);
			expect(printed.pages).toHaveLength(1);
			expect(printed.pages[0]).toMatch(/Boiling water scalds/);
			expect(printed.pages[0]).toMatch(
				/22:56\s+Morning, Mon\s+16 L\s+1, 2\s+01:11 Mon\s+08:26 Mon/,
			);
			expect(printed.pages[0]?.match(/Evening/g)).toHaveLength(7);
			await workbook.close();
		});

		test("the disagreements print with this unit's own settings", async () => {
			const workbook = await open("disagreements");
			const printed: Printed = await print(workbook.page, "Print this page", format);
			expect(printed).toMatchObject(size);
			expect(printed.pages.join()).toMatch(/Strength of the soak, here: 0\.5 % available chlorine/);
			expect(printed.pages.join()).not.toContain("Go to the setting");
			await workbook.close();
		});
	});
});

test.each([
	["", 3, /Never let chlorine meet vinegar/],
	["fr/", 3, /Ne jamais mettre le chlore en contact avec du vinaigre/],
	["pt/", 4, /Nunca deixe o cloro entrar em contacto com vinagre/],
] as const)(
	"every page of the wall tables names its product and carries the cautions /%s",
	async (language, count, caution) => {
		const at = { ...onStick, address: onStick.address + language };
		const workbook = await WorkbookPage.open(browser, at, {}, "wall-table.csv");
		const { pages } = readPdf(await workbook.page.pdf({ preferCSSPageSize: true }));
		expect(pages).toHaveLength(count);
		for (const page of pages) {
			expect(page.replace(/\s+/g, " ")).toMatch(caution);
			expect(page).toMatch(/3[.,]5 ?%|70 ?%|1[.,]5 ?g/);
		}
		await workbook.close();
	},
);

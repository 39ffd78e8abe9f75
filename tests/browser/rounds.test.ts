import { describe, expect, test } from "vitest";
import { type Changed, closeClean, openChanged } from "./changedDemo.ts";
import { browser, onStick as site } from "./fixture.ts";
import { printed } from "./paper.ts";

const A4_POINTS = { width: 596, height: 843 };
const LETTER_POINTS = { width: 612, height: 792 };
/** What the years of a cover stand on; said once, whatever the number of kinds. */
const UNDER_WHAT =
	"This holds while every round begins on time and takes no longer than planned, kits are renewed as set, and none of them fails or is lost.";
const size = ({ width, height }: { width: number; height: number }) => ({ width, height });

describe("what must be ready, on a memory stick", { timeout: 90_000 }, () => {
	const open = (sheet: string, changes?: Changed) => openChanged(browser, site, sheet, changes);
	const setting = (key: string, value: string) => ({
		"unit.csv": (text: string) => text.replace(new RegExp(`^${key},.*$`, "m"), `${key},${value}`),
	});

	test("the run sheet goes from day to day by its buttons and its list, and the picture follows", async () => {
		const workbook = await open("run-sheet.csv");
		const { page } = workbook;
		const who = page.locator(".who li");
		await expect.poll(() => who.count()).toBe(3);
		const soaks = page.locator(".timeline svg text", { hasText: "soak" });
		await expect
			.poll(() => soaks.allTextContents())
			.toEqual([
				"soak 08:06, out from 08:26",
				"soak 15:06, out from 15:26",
				"soak 22:06, out from 22:26",
			]);
		await expect
			.poll(() => who.first().textContent())
			.toBe(
				"Morning: 1 person 07:00–08:06, 08:26–08:35 and 09:00–09:29; nobody busy 08:06–08:26 and 08:35–09:00.",
			);
		await page.getByRole("button", { name: "Next day →" }).focus();
		for (const day of ["Tue 2 Mar", "Wed 3 Mar"]) {
			await page.keyboard.press("Enter");
			await expect.poll(() => page.locator(".run-sheet h2").textContent()).toBe(day);
		}
		await page.getByLabel("Day", { exact: true }).selectOption("2027-03-07");
		await expect.poll(() => page.locator(".run-sheet h2").textContent()).toBe("Sun 7 Mar");
		await page.getByRole("button", { name: "Next day →" }).press("Enter");
		await expect.poll(() => page.locator(".run-sheet h2").textContent()).toBe("Sun 7 Mar");
		await closeClean(workbook);
	});

	test("a round past midnight shows the next day's date", async () => {
		const workbook = await open("run-sheet.csv", {
			"rounds.csv": () => "start,label\n08:00,Morning\n23:10,Night\n",
		});
		await expect
			.poll(() => workbook.page.locator(".who li").last().textContent())
			.toContain("23:10–00:16 (Tue 2 Mar)");
		const paper = await printed(workbook.page, "Print this day’s work sheet");
		expect(paper.pages).toHaveLength(1);
		expect(paper.pages[0]).toContain("(Tue 2 Mar)");
		await closeClean(workbook);
	});

	test.each([
		["A4", A4_POINTS],
		["Letter", LETTER_POINTS],
	] as const)(
		"the run sheet prints one page a day on %s, the vinegar caution between descaling and soak",
		async (format, points) => {
			const workbook = await open("run-sheet.csv", setting("descale_every_rounds", "2"));
			const paper = await printed(workbook.page, "Print every day", format);
			expect(size(paper)).toEqual(points);
			expect(paper.pages).toHaveLength(7);
			for (const page of paper.pages) {
				expect(page).toContain("Willow Ford delivery unit (invented)");
				expect(page.match(/Soak under the solution/g)).toHaveLength(3);
				expect(page).toContain("Checked by, date");
				expect(page).toContain("A planning aid");
				const words = page.replace(/\s+/g, " ");
				expect(words).toMatch(/Solution: [\d.]+ L of water, then \d+ mL of Liquid bleach/);
				expect(words).toMatch(/Boiled, cooled water: \d+ L \(rinse buckets: 3 × 5 L\)/);
				expect(words).toMatch(/Gauze: \d+ pieces/);
				expect(words).toContain("Only if a kit waits.");
			}
			const [descaled = ""] = paper.pages.filter((page) => page.includes("Descale"));
			const places = ["Descale in", "Rinse and drain", "STOP. Any smell of vinegar left?"].map(
				(words) => descaled.indexOf(words),
			);
			expect(Math.min(...places)).toBeGreaterThan(0);
			expect(places).toEqual([...places].sort((a, b) => a - b));
			const after = descaled.slice(places.at(-1));
			expect(after.indexOf("Soak under")).toBeLessThan(after.indexOf("Rinse in three"));
			await closeClean(workbook);
		},
	);

	test("where every round descales a day takes two pages, each round whole on one of them", async () => {
		const workbook = await open("run-sheet.csv", setting("descale_every_rounds", "1"));
		const paper = await printed(workbook.page, "Print every day");
		expect(paper.pages).toHaveLength(14);
		const counts = paper.pages.map((page) =>
			["Gloves and apron", "Descale in", "STOP. Any smell", "Pour the solution away"].map(
				(words) => page.split(words).length - 1,
			),
		);
		for (const [rounds, ...others] of counts) expect(others).toEqual(Array(3).fill(rounds));
		const day = (i: number) => (counts[i]?.[0] ?? 0) + (counts[i + 1]?.[0] ?? 0);
		expect([0, 2, 4, 6, 8, 10, 12].map(day)).toEqual(Array(7).fill(3));
		await closeClean(workbook);
	});

	test("where each kit comes as it is used, the run sheet says so and gives minutes for one kit", async () => {
		const workbook = await open("run-sheet.csv", setting("reprocessing", "after_each_use"));
		const { page } = workbook;
		await expect.poll(() => workbook.headline()).toBe("Each kit takes 110 minutes as it comes");
		await expect
			.poll(() => page.locator(".run-sheet").textContent())
			.toContain("reprocesses each kit as soon as it has been used");
		await expect.poll(() => page.locator(".timeline svg").textContent()).toContain("soak min 38");
		const paper = await printed(page, "Print this day’s work sheet");
		expect(paper.pages).toHaveLength(1);
		expect(paper.pages[0]).toContain("38–58 min");
		expect(paper.pages[0]).toContain("White crust");
		await workbook.goTo("kit-cover.csv");
		await expect
			.poll(() => page.locator(".in-words").first().textContent())
			.toContain("With 4 kits");
		await expect.poll(() => page.locator(".brief tbody tr").count()).toBe(3);
		await workbook.goTo("day-cover.csv");
		await expect
			.poll(() => page.locator(".through-day figcaption").textContent())
			.toContain("No hour stands out");
		await closeClean(workbook);
	});

	test("kit cover says how often in years, and what would help, best first", async () => {
		const workbook = await open("kit-cover.csv");
		const { page } = workbook;
		const words = await page.locator(".in-words").allTextContents();
		expect(words.map((each) => each.replaceAll("\u202f", " "))).toEqual([
			"With 4 kits in service about one time in 10 000 no kit is ready when needed, about once in 48 years.",
			UNDER_WHAT,
		]);
		const rows = await page.locator(".brief tbody tr").allTextContents();
		expect(rows[0]).toContain("As it is now");
		const unmet = await page.locator(".brief tbody td.numeric").allTextContents();
		const others = unmet.slice(1).map(Number);
		expect(others.length).toBeGreaterThan(2);
		expect(others).toEqual([...others].sort((a, b) => a - b));
		await page.getByRole("link", { name: "All about these changes" }).click();
		await page
			.locator(`a[data-sheet="levers.csv"][aria-current=page]`)
			.waitFor({ state: "attached" });
		await expect.poll(() => workbook.headline()).toBe("What would help most: one more kit");
		await closeClean(workbook);
	});

	test("the weakest hour is named over its picture, in which every round start is drawn", async () => {
		const workbook = await open("day-cover.csv");
		expect((await workbook.headline()).replaceAll("\u202f", " ")).toBe(
			"Weakest at 09:30, when about one time in 1 200 no kit is ready when needed",
		);
		const pictures = workbook.page.locator(".through-day svg");
		await expect.poll(() => pictures.count()).toBe(2);
		const text = await pictures.first().textContent();
		for (const start of ["Morning 07:00", "Afternoon 14:00", "Evening 21:00"])
			expect(text).toContain(start);
		await expect.poll(() => pictures.last().locator(".risk-bar rect").count()).toBe(24);
		await closeClean(workbook);
	});

	test("several kinds of kit have a picture, words and a next kit each", async () => {
		const workbook = await open("day-cover.csv", {
			"kind-use.csv": () => "kind,uses_per_100_births\nBag and mask kit,8\nSuction kit,20\n",
			"kinds.csv": (text) => `${text}Suction kit,Bulb,1\n`,
			"kits.csv": (text) =>
				`${text}S1,Suction kit,in_service,2027-02-27,\nS2,Suction kit,in_service,2027-02-28,\n`,
		});
		const { page } = workbook;
		await expect
			.poll(() => page.locator(".through-day h2").allTextContents())
			.toEqual(["Bag and mask kit", "Suction kit"]);
		await workbook.goTo("kit-cover.csv");
		await expect
			.poll(() => page.locator(".in-words").allTextContents())
			.toEqual([
				expect.stringContaining("(Bag and mask kit)"),
				expect.stringContaining("(Suction kit)"),
				UNDER_WHAT,
			]);
		await expect.poll(() => page.locator(".brief caption").count()).toBe(2);
		await workbook.goTo("kit-register.csv");
		await expect
			.poll(() => workbook.headline())
			.toBe("Use K1 (Bag and mask kit) or S1 (Suction kit) next; 6 of 9 kits count");
		await closeClean(workbook);
	});

	test("a failed check typed in takes the kit out of the plan, and the register names the next", async () => {
		const workbook = await open("checks.csv");
		const { page } = workbook;
		const blankRow = (await workbook.table()).length - 2;
		await workbook.click(blankRow, 0);
		await workbook.paste("2027-02-28 20:00\tK1\t12\tyes\tyes\tyes\tno\tyes\tyes\tleaks");
		await workbook.goTo("kit-register.csv");
		await expect.poll(() => workbook.headline()).toBe("Use K2 next; 3 of 7 kits count");
		const line = page.locator(".kit-lines li", { hasText: "K1" });
		await expect.poll(() => line.textContent()).toContain("✕ in repair");
		await expect.poll(() => line.textContent()).toContain("the seal does not hold; not counted");
		await workbook.goTo("this-week");
		await expect
			.poll(() => workbook.headline())
			.toBe("4 kits are needed; this unit has only 3 in service");
		await workbook.goTo("kit-history");
		await expect.poll(() => workbook.headline()).toBe("Kit K1: in repair");
		const first = page.locator(".history tbody tr").first();
		await expect.poll(() => first.textContent()).toContain("the seal does not hold");
		await first.getByRole("button").click();
		await page.locator(`a[data-sheet="checks.csv"][aria-current=page]`).waitFor();
		await closeClean(workbook);
	});
});

import type { Page } from "playwright-core";
import { describe, expect, test } from "vitest";
import { type Changed, closeClean, openChanged } from "./changedDemo.ts";
import { browser, onStick as site } from "./fixture.ts";
import { type Printed, readPdf } from "./paper.ts";
import { SOON } from "./sheetTools.ts";

const days = (count: number, row: (at: number) => string) =>
	Array.from({ length: count }, (_, i) => row(i)).join("\n");
const dayOf = (at: number) => new Date(Date.UTC(2027, 2, 1 + at)).toISOString().slice(0, 10);

/** The demo with much of everything that pictures name: own births, rounds, orders on their way, kinds of kit. */
const FULL: Changed = {
	"births.csv": () => `date,births,note\n${days(7, (i) => `${dayOf(i)},${3 + ((i * 7) % 9)},`)}`,
	"rounds.csv": () =>
		"start,label\n05:30,Before dawn\n08:45,Morning after handover\n12:00,Noon\n15:10,Afternoon\n18:45,Evening\n22:15,Night",
	"lots.csv": (csv) =>
		`${csv.trimEnd()}\n${[3, 11, 17, 18, 80].map((at) => `Liquid bleach 3.5 %,N-${at},1200,,,${dayOf(at)},2027-12-31`).join("\n")}`,
	"kinds.csv": (csv) =>
		`${csv.trimEnd()}\n"Bag and mask kit, small babies",Bag,1\nSuction only,Bulb,1`,
	"kits.csv": (csv) =>
		`${csv.trimEnd()}\n${["S1", "S2", "S3"].map((mark) => `${mark},"Bag and mask kit, small babies",in_service,2027-02-26,`).join("\n")}\nA1,Suction only,in_service,2027-02-27,\nA2,Suction only,in_service,2027-02-27,`,
	"kind-use.csv": () =>
		'kind,uses_per_100_births,beds,spares\nBag and mask kit,8,,\n"Bag and mask kit, small babies",2,,\nSuction only,12,,',
};

const SHEETS = [
	"forecast.csv",
	"kit-cover.csv",
	"day-cover.csv",
	"run-sheet.csv",
	"boiling.csv",
	"strength.csv",
	"stock-ahead.csv",
	"month",
];

/** Pairs of words of which one stands on the other, and words that reach beyond their picture. */
function unreadable(page: Page): Promise<string[]> {
	return page.evaluate(() => {
		const [ACROSS, DOWN, BEYOND] = [3, 4, 2];
		const found: string[] = [];
		for (const picture of document.querySelectorAll("#sheet figure svg")) {
			const frame = picture.getBoundingClientRect();
			const words = [...picture.querySelectorAll("text")]
				.map((text) => ({ said: text.textContent ?? "", box: text.getBoundingClientRect() }))
				.filter(({ box }) => box.width > 0);
			words.forEach(({ said, box }, i) => {
				if (box.left < frame.left - BEYOND || box.right > frame.right + BEYOND)
					found.push(`“${said}” is cut`);
				for (const { said: other, box: one } of words.slice(0, i)) {
					const across = Math.min(box.right, one.right) - Math.max(box.left, one.left);
					const down = Math.min(box.bottom, one.bottom) - Math.max(box.top, one.top);
					if (across > ACROSS && down > DOWN) found.push(`“${said}” stands on “${other}”`);
				}
			});
		}
		return found;
	});
}

describe("pictures with much in them", { timeout: 60_000 }, () => {
	test.each([
		[1366, 768],
		[360, 740],
	])("no word stands on another or is cut, %i px wide", async (width, height) => {
		const workbook = await openChanged(browser, site, "this-week", FULL);
		await workbook.page.setViewportSize({ width, height });
		for (const sheet of SHEETS) {
			await workbook.goTo(sheet);
			await expect
				.poll(() => workbook.page.locator("#sheet figure svg text").count(), SOON)
				.toBeGreaterThan(3);
			if (sheet === "stock-ahead.csv")
				await workbook.page.locator("#stock-item").selectOption("Liquid bleach 3.5 %");
			await workbook.drawn();
			expect(await unreadable(workbook.page), sheet).toEqual([]);
		}
		await closeClean(workbook);
	});

	test("on paper a picture stands under its heading, and none is cut by the end of a page", async () => {
		const workbook = await openChanged(browser, site, "this-week", FULL);
		const paperOf = async (sheet: string): Promise<Printed> => {
			await workbook.goTo(sheet);
			await expect
				.poll(() => workbook.page.locator("#sheet figure svg").count(), SOON)
				.toBeGreaterThan(0);
			return readPdf(await workbook.page.pdf({ preferCSSPageSize: true }));
		};
		const [cover, helping] = (await paperOf("kit-cover.csv")).pages;
		expect(cover).toContain("kits in service");
		expect(cover).not.toContain("What would help");
		expect(helping).toContain("What would help");
		const lots = (page: string | undefined) => page?.match(/^ *\S+ ·+ /gm)?.length;
		const [five, others] = (await paperOf("strength.csv")).pages;
		expect([lots(five), lots(others)]).toEqual([5, 5]);
		await closeClean(workbook);
	});
});

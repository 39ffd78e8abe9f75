import { describe, expect, test } from "vitest";
import { browser, onStick, served } from "./fixture.ts";
import { WorkbookPage } from "./workbookPage.ts";

const WEDNESDAY = 3;

describe.each([
	["served", served],
	["on a memory stick", onStick],
] as const)("editing, %s", { timeout: 60_000 }, (_, site) => {
	test("Wednesday's births change every sheet that depends on them, and undo takes it back", async () => {
		const workbook = await WorkbookPage.open(browser, site);
		const before = { plan: await workbook.table(), births: await sheet(workbook, "births.csv") };
		await workbook.goTo("this-week");
		await workbook.type(0, WEDNESDAY, "40");
		const after = await workbook.table();
		expect(after[1]?.[WEDNESDAY]).toBe("40");
		for (const measure of ["Kits to reprocess", "Boiled water", "Gauze"])
			expect(await workbook.row(measure)).not.toEqual(
				before.plan.find((cells) => cells[0] === measure),
			);
		expect(await sheet(workbook, "births.csv")).not.toEqual(before.births);
		await workbook.page.keyboard.press("Control+z");
		await expect.poll(() => workbook.table()).toEqual(before.births);
		await workbook.goTo("this-week");
		await expect.poll(() => workbook.table()).toEqual(before.plan);
		expect(workbook.errors).toEqual([]);
		expect(workbook.requestsElsewhere).toEqual([]);
		await workbook.close();
	});

	test("clearing a day's births returns to the default", async () => {
		const workbook = await WorkbookPage.open(browser, site);
		const before = (await workbook.table())[1]?.[1];
		await workbook.type(0, 1, "17");
		expect((await workbook.table())[1]?.[1]).toBe("17");
		await workbook.page.keyboard.press("ArrowUp");
		await workbook.page.keyboard.press("Delete");
		await expect.poll(async () => (await workbook.table())[1]?.[1]).toBe(before);
		await workbook.close();
	});

	test("a draft is offered at the next opening", async () => {
		const workbook = await WorkbookPage.open(browser, site);
		await workbook.type(0, 2, "11");
		await workbook.page.reload();
		await workbook.page.getByRole("button", { name: "Go on with the draft" }).click();
		expect((await workbook.table())[1]?.[2]).toBe("11");
		await workbook.close();
	});

	test("a bad entry stays, is marked, and what depends on it shows a dash and says on what it waits", async () => {
		const workbook = await WorkbookPage.open(browser, site);
		await workbook.type(0, WEDNESDAY, "many");
		expect((await workbook.table())[1]?.[WEDNESDAY]).toBe("many");
		await expect.poll(() => workbook.page.locator(".grid .ht_master td.bad").count()).toBe(1);
		expect((await workbook.row("Boiled water"))[WEDNESDAY]).toBe("–");
		await expect.poll(() => workbook.headline()).toContain("many");
		await workbook.click(6, WEDNESDAY);
		await expect
			.poll(() => workbook.page.locator(".pane .reason").first().textContent())
			.toContain("many");
		await workbook.close();
	});
});

async function sheet(workbook: WorkbookPage, file: string): Promise<string[][]> {
	await workbook.goTo(file);
	return workbook.table();
}

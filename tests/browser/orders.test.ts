import { describe, expect, test } from "vitest";
import { browser, onStick as site } from "./fixture.ts";
import { WorkbookPage } from "./workbookPage.ts";

describe("an order from the day it is placed to the day it comes", { timeout: 90_000 }, () => {
	test("placed in one act, on its way, received in packs as a lot, and each act is one step back", async () => {
		const workbook = await WorkbookPage.open(browser, site, {}, "order.csv");
		const { page } = workbook;
		const said = page.locator(".entry-said");
		await expect.poll(() => workbook.headline()).toBe("Order 2 packs of Liquid bleach 3.5 % today");
		await page.getByText("Write down what was ordered").first().click();
		await page.getByRole("button", { name: "These are ordered" }).click();
		await expect.poll(() => said.textContent()).toMatch(/^1 order written down, placed on /);
		await expect.poll(() => workbook.headline()).toBe("Nothing to order today");

		await workbook.goTo("placed.csv");
		await expect.poll(() => workbook.headline()).toBe("2 orders on the way");
		expect((await workbook.table())[3]?.slice(0, 3)).toEqual([
			"2027-03-01",
			"Liquid bleach 3.5 %",
			"2",
		]);
		const choose = async () => {
			const bleach = page.locator("#store-order option", { hasText: "Liquid bleach" });
			await page.locator("#store-order").selectOption((await bleach.getAttribute("value")) ?? "");
		};
		await choose();
		await page.getByRole("button", { name: "Received", exact: true }).click();
		await expect
			.poll(() => page.locator("#store-lot-wrong").textContent())
			.toContain("Lot is blank");
		await page.getByLabel("Lot on the box or bottle").fill("B-0400");
		await page.getByLabel("Expires on").fill("2027-09-30");
		await page.getByRole("button", { name: "Received", exact: true }).click();
		await expect
			.poll(() => said.textContent())
			.toMatch(/^Liquid bleach 3.5 %, lot B-0400: .* received on /);
		await expect.poll(() => workbook.headline()).toBe("1 order on the way");

		await workbook.goTo("stock.csv");
		const lots = async () => (await workbook.table()).map((cells) => cells[1]);
		expect(await lots()).toContain("B-0400");
		await page.locator("#undo").click();
		await expect.poll(lots).not.toContain("B-0400");
		await workbook.goTo("placed.csv");
		await expect.poll(() => workbook.headline()).toBe("2 orders on the way");

		await choose();
		await page.getByRole("button", { name: "Give this order up" }).click();
		await expect.poll(() => workbook.headline()).toBe("1 order on the way");
		expect((await workbook.table())[3]?.[2]).toBe("0");
		expect(workbook.errors).toEqual([]);
		await workbook.close();
	});
});

describe("an order with less money than it costs", { timeout: 90_000 }, () => {
	test("money and the depot's packs are entered beside it, say what to take and what runs out, and end with the order", async () => {
		const workbook = await WorkbookPage.open(browser, site, {}, "order.csv");
		const { page } = workbook;
		const headline = () => workbook.headline();
		const whole = "Order 2 packs of Liquid bleach 3.5 % today";
		await expect.poll(headline).toBe(whole);
		await page.getByText("Less money, or the depot sends less").click();
		const money = page.getByLabel("Money for this order");
		await money.fill("1.5");
		await money.press("Enter");
		await expect
			.poll(headline)
			.toMatch(
				/^With 1\.50 of 2\.20 demo money: Liquid bleach 3\.5 % 1 of 2 packs; Liquid bleach 3\.5 % runs out first, on /,
			);
		const steps = page.getByRole("region", { name: "What to take first" }).locator("tbody tr");
		await expect.poll(() => steps.count()).toBe(2);
		await expect.poll(() => steps.last().textContent()).toContain("not paid for");
		const out = page.getByRole("region", { name: "What then runs out" }).locator("tbody tr");
		await expect.poll(() => out.textContent()).toMatch(/1 of 2.*disinfection/);

		const sent = page.locator(".order-packs").first().getByLabel("Liquid bleach 3.5 %");
		await sent.fill("a few");
		await sent.press("Enter");
		await expect.poll(() => sent.getAttribute("aria-invalid")).toBe("true");
		await sent.fill("0");
		await sent.press("Enter");
		await expect.poll(headline).toMatch(/nothing of Liquid bleach 3\.5 %/);
		await page.locator("#undo").click();
		await page.locator("#undo").click();
		await expect.poll(headline).toBe(whole);

		await page.getByRole("button", { name: "Half of each" }).click();
		await expect
			.poll(headline)
			.toMatch(/^With what the depot sends: Liquid bleach 3\.5 % 1 of 2 packs/);
		await page.getByText("Write down what was ordered").first().click();
		await page.getByRole("button", { name: "These are ordered" }).click();
		await expect.poll(headline).toBe("Order 1 pack of Liquid bleach 3.5 % today");
		await expect.poll(() => sent.inputValue()).toBe("");
		expect(workbook.errors).toEqual([]);
		await workbook.close();
	});
});

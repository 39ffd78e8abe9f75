import { describe, expect, test } from "vitest";
import { monthsOfStock } from "../../../src/core/stock/monthsOfStock.ts";
import { orderPacks, packsFor } from "../../../src/core/stock/orderPacks.ts";
import { targetStock } from "../../../src/core/stock/targetStock.ts";
import { expectWithin } from "../../expectWithin.ts";
import { answerOf, refusalOf } from "../answerOf.ts";

describe("packs for a need", () => {
	test.each([
		[0, 100, 0],
		[-50, 100, 0],
		[0.001, 100, 1],
		[100, 100, 1],
		[100.001, 100, 2],
		[0.3, 0.1, 3],
		[0.1 + 0.2, 0.1, 3],
		[0.7, 0.1, 7],
		[1.1, 1.1 / 3, 3],
		[1e9, 0.000001, 1e15],
	])("%d in packs of %d: %d", (need, packSize, packs) => {
		expect(packsFor(need, packSize)).toBe(packs);
	});
});

describe("target stock", () => {
	test.each([
		[90, 10, 100],
		[90, 0, 90],
		[0, 50, 0],
		[10, 90, 100],
	])("for %d used, %d %% wasted: %d", (use, wastagePct, target) => {
		expectWithin(answerOf(targetStock, { use, wastagePct }), target, 1e-9, "pieces");
	});

	test.each([
		[-1, 10],
		[1, 100],
		[1, -1],
	])("for %d used, %d %% wasted there is none", (use, wastagePct) => {
		expect(refusalOf(targetStock, { use, wastagePct }).map((p) => p.code)).toEqual([
			"outside-limits",
		]);
	});
});

describe("packs to order", () => {
	test.each([
		["enough in the store", { target: 100, usable: 100, onOrder: 0 }, 0],
		["enough with what is on its way", { target: 100, usable: 60, onOrder: 40 }, 0],
		["more than enough is never a negative order", { target: 100, usable: 500, onOrder: 9 }, 0],
		["one piece short", { target: 101, usable: 60, onOrder: 40 }, 1],
		["both are taken off", { target: 400, usable: 150, onOrder: 50 }, 8],
		["nothing used", { target: 0, usable: 0, onOrder: 0 }, 0],
	])("%s", (_what, stock, packs) => {
		expect(answerOf(orderPacks, { ...stock, packSize: 25 })).toBe(packs);
	});

	test("a pack of nothing is refused", () => {
		const inputs = { target: 100, usable: 0, onOrder: 0, packSize: 0 };
		expect(refusalOf(orderPacks, inputs).map((p) => p.code)).toEqual(["outside-limits"]);
	});
});

describe("months of stock", () => {
	test.each([
		[304, 10, 1],
		[0, 10, 0],
		[152, 2.5, 2],
	])("%d at %d a day: %d", (usable, usePerDay, months) => {
		expectWithin(answerOf(monthsOfStock, { usable, usePerDay }), months, 1e-12, "months");
	});

	test("of what nobody uses there are none", () => {
		expect(refusalOf(monthsOfStock, { usable: 5, usePerDay: 0 }).map((p) => p.code)).toEqual([
			"outside-limits",
		]);
	});
});

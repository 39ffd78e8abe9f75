import { describe, expect, test } from "vitest";
import type { Strength } from "../../../src/core/chlorine/availableChlorine.ts";
import { cheapest, type Interval, orderInterval } from "../../../src/core/stock/orderInterval.ts";
import { expectWithin } from "../../expectWithin.ts";

const liquid = (gramsPerLitre: number): Strength => ({ form: "liquid", gramsPerLitre });
const steady = () => liquid(50);
/** Loses 1 g/L a day. */
const fading = (day: number) => liquid(50 - day);
const bottle = { size: 1000, price: 3 };

describe("product for a steady use of chlorine", () => {
	test.each([
		["a liquid that does not fade", steady, 100, 7, 7 * 2000, 0],
		["a powder", () => ({ form: "powder", gramsPerGram: 0.7 }) as Strength, 14, 7, 140, 0],
		["tablets", () => ({ form: "tablet", gramsPerTablet: 1.5 }) as Strength, 3, 7, 14, 0],
		[
			"a liquid that fades",
			fading,
			100,
			3,
			1e5 * (1 / 50 + 1 / 49 + 1 / 48),
			100 * (50 / 49 + 50 / 48 - 2),
		],
		["one day of it: fresh", fading, 100, 1, 2000, 0],
	] as const)("%s", (_what, strengthAfter, gramsPerDay, days, quantity, lost) => {
		const interval = orderInterval(days, gramsPerDay, strengthAfter, { size: 1, price: null });
		expectWithin(interval.quantity, quantity, 1e-9 * quantity, "product");
		expectWithin(interval.lostGrams, lost, 1e-9, "g");
	});

	test.each([
		["a liquid", liquid(37.3)],
		["a powder", { form: "powder", gramsPerGram: 0.7 }],
		["a tablet", { form: "tablet", gramsPerTablet: 1.5 }],
	] as const)(
		"%s that keeps its strength loses nothing, not even a rounding",
		(_what, strength) => {
			const lost = [7, 14, 28, 56, 91].map(
				(days) => orderInterval(days, 27.7078890311, () => strength, bottle).lostGrams,
			);
			expect(lost).toEqual([0, 0, 0, 0, 0]);
		},
	);

	test.each([
		[7, 14, 42],
		[8, 16, 48],
		[1, 2, 6],
	])("%d days of 2,000 mL take %d bottles of a litre: %d", (days, packs, cost) => {
		expect(orderInterval(days, 100, steady, bottle)).toMatchObject({ packs, cost });
	});

	test("a started pack is a pack; one just full is no more than that", () => {
		expect(orderInterval(7, 100, steady, { size: 14_000, price: 1 }).packs).toBe(1);
		expect(orderInterval(7, 100, steady, { size: 13_999, price: 1 }).packs).toBe(2);
	});

	test("without a price the packs are known and the cost is not", () => {
		expect(orderInterval(7, 100, steady, { size: 1000, price: null })).toMatchObject({
			packs: 14,
			cost: null,
		});
	});
});

describe("the interval that costs least a day", () => {
	const of = (days: number, packs: number, cost: number | null): Interval => ({
		days,
		packs,
		cost,
		quantity: 0,
		lostGrams: 0,
	});
	test.each([
		["the cheapest", [of(7, 1, 10), of(14, 1, 19), of(28, 1, 50)], 14],
		["the longest of those that tie", [of(7, 1, 10), of(28, 4, 40), of(14, 2, 20)], 28],
		["by packs where no price is known", [of(7, 2, null), of(14, 3, null), of(28, 7, null)], 14],
		["by cost, not packs, where it is", [of(7, 1, 10), of(14, 9, 12)], 14],
	])("is %s", (_what, intervals, days) => {
		expect(cheapest(intervals).days).toBe(days);
	});

	const best = (strengthAfter: (day: number) => Strength, size: number) =>
		cheapest(
			[7, 14, 28, 42].map((days) => orderInterval(days, 100, strengthAfter, { size, price: 1 })),
		).days;

	test("is the longest where nothing fades, and shorter the faster it does", () => {
		expect(best(steady, 10)).toBe(42);
		expect(best((day) => liquid(50 - day), 10)).toBe(7);
	});

	test("with large packs a longer one may win although the product fades", () => {
		expect(best((day) => liquid(50 - 0.1 * day), 20_000)).toBeGreaterThan(7);
	});
});

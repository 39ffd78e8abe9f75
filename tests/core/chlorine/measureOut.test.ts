import { describe, expect, test } from "vitest";
import type { Strength } from "../../../src/core/chlorine/availableChlorine.ts";
import { measureOut } from "../../../src/core/chlorine/measureOut.ts";
import { upTo } from "../../../src/core/upTo.ts";
import { expectWithin } from "../../expectWithin.ts";
import { answerOf, refusalOf } from "../answerOf.ts";

const liquid = (gramsPerLitre: number): Strength => ({ form: "liquid", gramsPerLitre });
const powder = (gramsPerGram: number): Strength => ({ form: "powder", gramsPerGram });
const tablet = (gramsPerTablet: number): Strength => ({ form: "tablet", gramsPerTablet });
const mix = (strength: Strength, litres: number, targetPct = 0.5, stepMl = 10, stepGrams = 1) =>
	answerOf(measureOut, { strength, litres, targetPct, stepMl, stepGrams });

describe("upTo", () => {
	test.each([
		[785.71, 10, 790],
		[780, 10, 780],
		[780.0001, 10, 790],
		[0, 10, 0],
		[0.001, 10, 10],
		[0.3, 0.1, 0.3],
		[0.7, 0.1, 0.7],
		[1.1, 0.1, 1.1],
		[7.142857, 1, 8],
		[7.142857, 0.5, 7.5],
		[4, 1, 4],
		[100_000_000.4, 1, 100_000_001],
	])("%d in steps of %d is %d", (quantity, step, expected) => {
		expectWithin(upTo(quantity, step), expected, 1e-9, "steps");
	});

	test("a division that should have come out whole does not take one step more", () => {
		for (let n = 1; n < 400; n++)
			for (const step of [0.1, 0.3, 0.7]) expectWithin(upTo(n * step, step), n * step, 1e-9, "mL");
	});
});

describe("a liquid", () => {
	test.each([
		["3.5 %", 35, 5.5, 790, 4.71, 0.502727],
		["5 %", 50, 1, 100, 0.9, 0.5],
		["5 %, 5.5 L", 50, 5.5, 550, 4.95, 0.5],
		["0.6 %", 6, 1, 840, 0.16, 0.504],
	])("%s: product, water and what it makes", (_name, grams, litres, quantity, water, made) => {
		const found = mix(liquid(grams), litres);
		expect(found.measure).toBe("mL");
		expectWithin(found.quantity, quantity, 1e-9, "mL");
		expectWithin(found.waterLitres, water, 1e-9, "L");
		expectWithin(found.strengthMadePct, made, 1e-6, "%");
	});

	test("of the very strength wanted takes no water", () => {
		expect(mix(liquid(5), 2)).toEqual({
			litres: 2,
			quantity: 2000,
			measure: "mL",
			waterLitres: 0,
			strengthMadePct: 0.5,
		});
	});

	test("rounding up never takes more than the whole volume", () => {
		const found = mix(liquid(5.01), 0.105, 0.5, 10);
		expect(found.quantity).toBe(105);
		expect(found.waterLitres).toBe(0);
	});

	test.each([4.99, 1, 0])("of %d g/L is too weak for 0.5 %%", (grams) => {
		const [found] = refusalOf(measureOut, {
			strength: liquid(grams),
			litres: 5,
			targetPct: 0.5,
			stepMl: 10,
			stepGrams: 1,
		});
		expect(found).toMatchObject({ code: "too-weak", allowed: "at least 0.5 %" });
		expect(found?.message).toMatch(/cannot be made stronger/);
	});

	test("product and water make the full volume", () => {
		for (const grams of [6, 35, 50, 125])
			for (const litres of [0.5, 1, 5.5, 20]) {
				const found = mix(liquid(grams), litres);
				expectWithin(found.quantity / 1000 + found.waterLitres, litres, 1e-9, "L");
			}
	});
});

describe("a powder", () => {
	test.each([
		[0.7, 1, 1, 8, 0.56],
		[0.7, 1, 0.001, 7.143, 0.50001],
		[0.35, 1, 0.001, 14.286, 0.50001],
		[0.7, 5.5, 1, 40, 0.509091],
	])("of %d g/g in %d L by %d g: %d g", (strength, litres, step, grams, made) => {
		const found = mix(powder(strength), litres, 0.5, 10, step);
		expect(found.measure).toBe("g");
		expectWithin(found.quantity, grams, 1e-9, "g");
		expectWithin(found.strengthMadePct, made, 1e-6, "%");
		expect(found.waterLitres).toBe(litres);
	});

	test("weaker than the target is refused", () => {
		const inputs = { strength: powder(0.004), litres: 1, targetPct: 0.5, stepMl: 10, stepGrams: 1 };
		const [found] = refusalOf(measureOut, inputs);
		expect(found).toMatchObject({ code: "too-weak", received: "0.4 %" });
		expect(mix(powder(0.005), 1)).toMatchObject({ quantity: 1000, strengthMadePct: 0.5 });
	});
});

describe("tablets", () => {
	test.each([
		[1.5, 1, 0.5, 4, 0.6],
		[1, 10, 0.5, 50, 0.5],
		[1.5, 1, 0.1, 1, 0.15],
		[5, 1, 0.5, 1, 0.5],
	])("of %d g in %d L for %d %%: %d", (grams, litres, target, count, made) => {
		const found = mix(tablet(grams), litres, target);
		expect([found.quantity, found.measure]).toEqual([count, "tablet"]);
		expectWithin(found.strengthMadePct, made, 1e-9, "%");
	});

	test("without chlorine are refused", () => {
		const inputs = { strength: tablet(0), litres: 1, targetPct: 0.5, stepMl: 10, stepGrams: 1 };
		expect(refusalOf(measureOut, inputs).map((p) => p.code)).toEqual(["no-chlorine"]);
	});
});

test.each([
	["litres", { litres: 0 }],
	["targetPct", { targetPct: 0 }],
	["stepMl", { stepMl: 0 }],
	["stepGrams", { stepGrams: 0 }],
])("%s of 0 lies outside the limits", (_name, change) => {
	const inputs = {
		strength: liquid(35),
		litres: 1,
		targetPct: 0.5,
		stepMl: 10,
		stepGrams: 1,
		...change,
	};
	expect(refusalOf(measureOut, inputs).map((p) => p.code)).toEqual(["outside-limits"]);
});

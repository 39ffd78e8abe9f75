import { describe, expect, test } from "vitest";
import { measureOut } from "../../src/core/chlorine/measureOut.ts";
import { fadingRate, strengthOfLiquid } from "../../src/core/chlorine/strengthOfLiquid.ts";
import { strengthOfPowder } from "../../src/core/chlorine/strengthOfPowder.ts";
import { answerOf } from "../core/answerOf.ts";
import { checkCases, printed, type ReferenceCase } from "./referenceCase.ts";

const law = (place: string) =>
	printed(
		"Adam and Gordon, Inorganic Chemistry 1999;38:1299, abstract; the rate's factor from memory",
		place,
		"derived",
	);

checkCases(
	"rate of fading",
	[
		{
			id: "25 °C, ionic strength 3.58",
			inputs: 25,
			expected: 3.46e-8,
			tolerance: 3.5e-10,
			unit: "L/(mol·s)",
			why: "three digits",
			source: law("rate law"),
		},
		{
			id: "35 °C over 25 °C",
			inputs: 35,
			expected: 3.92 * 3.46e-8,
			tolerance: 2e-9,
			unit: "L/(mol·s)",
			why: "a ratio of 3.92 ± 0.03 and three digits",
			source: law("ratio; Powell prints 3.5 times for 10 degrees"),
		},
	],
	(celsius) => fadingRate(3.58, celsius),
);

type Bottle = { gramsPerLitre: number; storeC: number; days: number };
const bottle = (
	gramsPerLitre: number,
	storeC: number,
	days: number,
	left: number,
	tolerance: number,
): ReferenceCase<Bottle> => ({
	id: `${gramsPerLitre} g/L at ${storeC} °C after ${days} days`,
	inputs: { gramsPerLitre, storeC, days },
	expected: left,
	tolerance,
	unit: "g/L",
	why: "as many digits as were worked out",
	source: law("1/C = 1/C₀ + k·t"),
});
const today = (inputs: Bottle) => answerOf(strengthOfLiquid, { ...inputs, fadeFactor: 1 });
checkCases(
	"liquids in a warm store",
	[
		bottle(125, 25, 30, 0.8635 * 125, 0.01),
		bottle(50, 30, 180, 36.56, 0.005),
		bottle(35, 30, 90, 31.5, 0.005),
		bottle(120, 35, 60, 56.26, 0.005),
		bottle(50, 35, 90, 36.8, 0.1),
	],
	today,
);

/** Grams a litre, and the days after which half is left at 25 and at 35 °C. */
const halves = [
	[150, 124, 31.7],
	[125, 190, 48.4],
	[100, 302, 77.1],
	[50, 981, 250],
] as const;
checkCases(
	"half is left",
	halves.flatMap(([grams, at25, at35]) => [
		bottle(grams, 25, at25, grams / 2, grams * 0.004),
		bottle(grams, 35, at35, grams / 2, grams * 0.004),
	]),
	today,
);

describe("beyond the law", () => {
	test.each([
		[10, 1],
		[15, 1],
		[20, 1],
	])("ten degrees more than %d fade two to four times as fast, or a little more", (celsius) => {
		const times = fadingRate(3.58, celsius + 10) / fadingRate(3.58, celsius);
		expect(times).toBeGreaterThan(2);
		expect(times).toBeLessThan(4.6);
	});

	test("the unit's factor shortens the time", () => {
		const slow = answerOf(strengthOfLiquid, {
			gramsPerLitre: 50,
			storeC: 30,
			days: 130,
			fadeFactor: 1,
		});
		const fast = answerOf(strengthOfLiquid, {
			gramsPerLitre: 50,
			storeC: 30,
			days: 100,
			fadeFactor: 1.3,
		});
		expect(Math.abs(slow - fast)).toBeLessThan(1e-9);
	});

	test("no time, no loss, to the last digit; no chlorine, none to lose", () => {
		for (const gramsPerLitre of [5, 6, 26, 35, 50, 52.5, 120])
			expect(
				answerOf(strengthOfLiquid, { gramsPerLitre, storeC: 40, days: 0, fadeFactor: 1.3 }),
			).toBe(gramsPerLitre);
		expect(
			answerOf(strengthOfLiquid, { gramsPerLitre: 0, storeC: 40, days: 90, fadeFactor: 1.3 }),
		).toBe(0);
	});
});

checkCases(
	"powder of 70 % after two years",
	[
		{
			id: "grams for a litre of 0.5 %",
			inputs: 2,
			expected: 7.58,
			tolerance: 0.01,
			unit: "g",
			why: "printed loss read as points of the 70",
			source: printed("Cholera outbreak field manual", "Appendix 14: about 2 % a year", "derived"),
		},
	],
	(years) => {
		const gramsPerGram = answerOf(strengthOfPowder, {
			gramsPerGram: 0.7,
			days: years * 365.25,
			lossPointsPerYear: 2,
		});
		return answerOf(measureOut, {
			strength: { form: "powder", gramsPerGram },
			litres: 1,
			targetPct: 0.5,
			stepMl: 1,
			stepGrams: 0.001,
		}).quantity;
	},
);

test("a powder does not lose more than it holds", () => {
	expect(answerOf(strengthOfPowder, { gramsPerGram: 0.1, days: 3653, lossPointsPerYear: 2 })).toBe(
		0,
	);
});

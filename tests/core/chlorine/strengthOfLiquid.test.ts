import { describe, expect, test } from "vitest";
import { fadingRate, strengthOfLiquid } from "../../../src/core/chlorine/strengthOfLiquid.ts";
import { strengthOfPowder } from "../../../src/core/chlorine/strengthOfPowder.ts";
import { expectWithin } from "../../expectWithin.ts";
import { answerOf, refusalOf } from "../answerOf.ts";

const bottle = { gramsPerLitre: 50, storeC: 30, days: 180, fadeFactor: 1 };
const liquid = (change: Partial<typeof bottle>) =>
	answerOf(strengthOfLiquid, { ...bottle, ...change });

describe("a liquid", () => {
	test.each([
		[125, 25, 30, 0.8635 * 125],
		[50, 30, 180, 36.56],
		[35, 30, 90, 31.5],
		[120, 35, 60, 56.26],
	])("%d g/L at %d °C after %d days holds %d g/L", (gramsPerLitre, storeC, days, left) => {
		expectWithin(liquid({ gramsPerLitre, storeC, days }), left, 0.01, "g/L");
	});

	test("half is left after 1 ÷ (k · molarity), and a third after twice that", () => {
		const molar = 50 / 70.906;
		const half = 1 / (fadingRate(2 * molar + 0.05, 30) * molar) / 86_400;
		expectWithin(liquid({ days: half }), 25, 1e-9, "g/L");
		expectWithin(liquid({ days: 2 * half }), 50 / 3, 1e-9, "g/L");
	});

	test("a factor of 0 stops it, a factor of 2 halves the time", () => {
		expect(liquid({ fadeFactor: 0 })).toBe(50);
		expectWithin(liquid({ fadeFactor: 2, days: 90 }), liquid({}), 1e-12, "g/L");
	});

	test.each([
		[{ storeC: 56 }, "Temperature of the store"],
		[{ storeC: -1 }, "Temperature of the store"],
		[{ days: -1 }, "Days since it was made"],
		[{ gramsPerLitre: -1 }, "Strength on the label"],
	])("%o lies outside the law", (change, label) => {
		expect(refusalOf(strengthOfLiquid, { ...bottle, ...change })).toMatchObject([
			{ code: "outside-limits", message: expect.stringContaining(label) },
		]);
	});
});

describe("a powder", () => {
	test.each([
		[0.7, 0, 2, 0.7],
		[0.7, 365.25, 2, 0.68],
		[0.7, 730.5, 2, 0.66],
		[0.35, 730.5, 5, 0.25],
		[0.7, 730.5, 0, 0.7],
		[0.02, 730.5, 2, 0],
	])(
		"of %d after %d days at %d points a year holds %d",
		(gramsPerGram, days, lossPointsPerYear, left) => {
			expectWithin(
				answerOf(strengthOfPowder, { gramsPerGram, days, lossPointsPerYear }),
				left,
				1e-12,
				"g/g",
			);
		},
	);
});

import { describe, test } from "vitest";
import { fadingRate, strengthOfLiquid } from "../../src/core/chlorine/strengthOfLiquid.ts";
import { answerOf } from "../core/answerOf.ts";
import { expectWithin } from "../expectWithin.ts";
import { checkCases, printed } from "./referenceCase.ts";

const law = (place: string) =>
	printed("Adam and Gordon, Inorganic Chemistry 1999;38:1299, abstract", place, "derived");

/** d[OCl]/dt = −k·[OCl]² in steps of Runge and Kutta, k held at its first value; g/L in and out. */
function byRungeKutta(
	gramsPerLitre: number,
	celsius: number,
	days: number,
	factor: number,
): number {
	const grams = 70.906;
	let molar = gramsPerLitre / grams;
	const kelvin = celsius + 273.15;
	const gas = 8.314;
	// Written as one exponential, apart from the program's own form.
	const k =
		factor *
		2.083e10 *
		kelvin *
		Math.exp(Math.LN10 * 0.149 * (2 * molar + 0.05) - (1.018e5 / kelvin + 56.5) / gas);
	const steps = 6000;
	const h = (days * 86_400) / steps;
	const slope = (c: number) => -k * c * c;
	for (let i = 0; i < steps; i++) {
		const a = slope(molar);
		const b = slope(molar + (h * a) / 2);
		const c = slope(molar + (h * b) / 2);
		const d = slope(molar + h * c);
		molar += (h * (a + 2 * b + 2 * c + d)) / 6;
	}
	return molar * grams;
}

describe("the closed form is the solution of the law", () => {
	test.each(
		[5, 26, 50, 125, 150].flatMap((grams) =>
			[15, 25, 35, 55].flatMap((celsius) => [1, 90, 730].map((days) => [grams, celsius, days])),
		),
	)("%d g/L at %d °C after %d days", (gramsPerLitre = 0, storeC = 0, days = 0) => {
		for (const fadeFactor of [1, 1.3]) {
			const expected = byRungeKutta(gramsPerLitre, storeC, days, fadeFactor);
			const closed = answerOf(strengthOfLiquid, { gramsPerLitre, storeC, days, fadeFactor });
			// The steps' own error is below 1e-9 of the value over these times.
			expectWithin(closed, expected, 1e-8 * expected, "g/L");
		}
	});
});

checkCases(
	"ten degrees warmer",
	[
		{
			id: "35 °C over 25 °C",
			inputs: [25, 35] as const,
			expected: 3.92,
			tolerance: 0.03,
			unit: "times",
			why: "three digits; another publication prints 3.5, Lister's activation energy gives 3.89",
			source: law("rate law, ratio"),
		},
	],
	([cold, warm]) => fadingRate(3.58, warm) / fadingRate(3.58, cold),
);

checkCases(
	"share left of 125 g/L at 25 °C",
	[
		{
			id: "after 30 days",
			inputs: 30,
			expected: 86.4,
			tolerance: 0.3,
			unit: "%",
			why: "three digits, worked out with 70.905 g/mol",
			source: law("1/C = 1/C₀ + k·t"),
		},
	],
	(days) =>
		answerOf(strengthOfLiquid, { gramsPerLitre: 125, storeC: 25, days, fadeFactor: 1 }) / 1.25,
);

/** Days until half is left, as in the notes, at 25 and at 35 °C. */
const halves = [
	[150, 124, 31.7],
	[125, 190, 48.4],
	[100, 302, 77.1],
	[50, 981, 250],
] as const;
checkCases(
	"days until half is left",
	halves.flatMap(([grams, at25, at35]) =>
		[[25, at25] as const, [35, at35] as const].map(([celsius, days]) => ({
			id: `${grams} g/L at ${celsius} °C`,
			inputs: { grams, celsius },
			expected: days,
			tolerance: 0.004 * days,
			unit: "days",
			why: "three digits: up to 0.2 % from rounding, and as much from 70.905 for 70.906 g/mol and a rate of three digits",
			source: law("half-life 1 ÷ (k · C₀)"),
		})),
	),
	({ grams, celsius }) => {
		const molar = grams / 70.906;
		return 1 / (fadingRate(2 * molar + 0.05, celsius) * molar) / 86_400;
	},
);

test("half-lives of the same bottle at two temperatures stand in the ratio of the rates", () => {
	for (const [, at25, at35] of halves)
		expectWithin(at25 / at35, fadingRate(1, 35) / fadingRate(1, 25), 0.03, "times");
});

import { describe, expect, test } from "vitest";
import type { Amounts } from "../../../src/core/amounts.ts";
import { chanceEnough } from "../../../src/core/counts/chanceEnough.ts";
import { always, type Counts, once } from "../../../src/core/counts/counts.ts";
import { poisson } from "../../../src/core/counts/poisson.ts";
import { productExpected, productSetAside } from "../../../src/core/stock/productSetAside.ts";
import { expectWithin } from "../../expectWithin.ts";
import { answerOf } from "../answerOf.ts";
import { meanOf, quantileOf } from "./everyPattern.ts";

/** Chance of every amount of product, by going through every number of preparations of every day. */
function everyAmount(preparations: readonly Counts[], quantities: readonly number[]) {
	let amounts = new Map([[0, 1]]);
	preparations.forEach(({ first, chance }, day) => {
		const next = new Map<number, number>();
		for (const [amount, p] of amounts)
			chance.forEach((q, i) => {
				const sum = Number((amount + (first + i) * (quantities[day] as number)).toFixed(6));
				next.set(sum, (next.get(sum) ?? 0) + p * q);
			});
		amounts = next;
	});
	return amounts;
}

const three: Counts = { first: 0, chance: Float64Array.of(0.1, 0.2, 0.3, 0.4) };
const cases: readonly (readonly [string, Counts[], number[]])[] = [
	["a fading liquid", [three, three, three], [790, 800, 820]],
	["one strength", [three, three], [500, 500]],
	["tablets", [three, once(0.3)], [4, 5]],
	["fractions of a gram", [three, three], [17.5, 17.6]],
	["a day without any", [always(0), three], [790, 800]],
	["always the same", [always(2), always(3)], [10, 20]],
	["nothing measured out", [three], [0]],
];

describe("product for the preparations of some days", () => {
	test.each(cases)("%s: mean and set aside", (_what, preparations, quantities) => {
		const amounts = everyAmount(preparations, quantities);
		expectWithin(
			answerOf(productExpected, { preparations, quantities }),
			meanOf(amounts),
			1e-9,
			"mL, g or tablets",
		);
		for (const confidence of [0.5, 0.8, 0.95, 0.999])
			expectWithin(
				answerOf(productSetAside, { preparations, quantities, confidence }),
				quantileOf(amounts, confidence),
				1e-9,
				"mL, g or tablets",
			);
	});

	test("a whole pack far beyond what is set aside is as sure to be enough as it is", () => {
		const inputs = {
			preparations: new Array<Counts>(9).fill(poisson(0.1)),
			quantities: Array.from({ length: 9 }, (_, day) => 700.1 + 3.37 * day),
			confidence: 0.5,
		};
		const amounts = productSetAside.mayCome?.(inputs) as Amounts;
		// Poisson, mean 0.9: more than 2 come 0.0629 times of 1, more than 12 hardly ever.
		expectWithin(chanceEnough(amounts, 2 * 740), 1 - 0.0629, 1e-4, "chance");
		expectWithin(chanceEnough(amounts, 12 * 740), 1, 1e-9, "chance");
	});

	test("the sum of days is not the sum of the days' set-asides", () => {
		const preparations = new Array<Counts>(7).fill(poisson(3));
		const quantities = new Array<number>(7).fill(100);
		const week = answerOf(productSetAside, { preparations, quantities, confidence: 0.95 });
		expect(week).toBe(2900); // Poisson mean 21; seven days of 6 would be 4,200
	});

	test("over a year of a different strength each day, never less than asked for, by less than 1 in 50 more", () => {
		const preparations = new Array<Counts>(366).fill(always(3));
		const quantities = preparations.map((_, day) => 790 + day * 1.37);
		const inputs = { preparations, quantities };
		const asked = answerOf(productExpected, inputs);
		const aside = answerOf(productSetAside, { ...inputs, confidence: 0.95 });
		expect(aside).toBeGreaterThanOrEqual(asked - 1e-6);
		expect(aside).toBeLessThan(asked * 1.02);
	});

	test("steps that are too fine are parts of the most that may be used", () => {
		const inputs = { preparations: [once(0.5), always(2)], quantities: [100.000001, 200] };
		// 50 and 400 on average, eight times the spread of the first, and eight of the largest.
		const most = 450 + 8 * (50 + 200);
		const size = productSetAside.mayCome?.({ ...inputs, confidence: 0.95 }).size as number;
		expectWithin(size, most / 50_000, 1e-8, "mL");
	});

	test("so is a year of chances", () => {
		const preparations = new Array<Counts>(366).fill(poisson(3));
		const quantities = preparations.map((_, day) => 790 + day * 1.37);
		const half = answerOf(productSetAside, { preparations, quantities, confidence: 0.5 });
		expectWithin(
			half / answerOf(productExpected, { preparations, quantities }),
			1.001,
			0.001,
			"times",
		);
	});
});

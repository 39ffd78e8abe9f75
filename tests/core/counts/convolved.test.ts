import { describe, expect, test } from "vitest";
import {
	convolved,
	isWorthTransforming,
	transformLength,
} from "../../../src/core/counts/convolved.ts";
import { setAside } from "../../../src/core/counts/counts.ts";
import { poisson } from "../../../src/core/counts/poisson.ts";
import { plus } from "../../../src/core/counts/sumOf.ts";
import { expectWithin } from "../../expectWithin.ts";
import { randomNumbers } from "../../reference/randomNumbers.ts";

describe("counts added up by transforms are those added up one by one", () => {
	test.each([
		[1, 1, 1],
		[2, 1, 2],
		[5, 3, 7],
		[5, 3, 4],
		[100, 300, 399],
		[257, 255, 200],
	])("%d amounts and %d, the first %d of the sum", (few, many, amounts) => {
		const random = randomNumbers(few * many);
		const any = (length: number) => Float64Array.from({ length }, () => random() / length);
		const [a, b] = [any(few), any(many)];
		const found = convolved(a, b, amounts, transformLength(few + many - 1));
		expect(found).toHaveLength(amounts);
		for (let at = 0; at < amounts; at++) {
			let wanted = 0;
			for (let i = Math.max(0, at - many + 1); i <= Math.min(at, few - 1); i++)
				wanted += (a[i] as number) * (b[at - i] as number);
			expectWithin(found[at] as number, wanted, 1e-15, "chance");
		}
	});

	test("what cannot come has no chance, not even by rounding", () => {
		const even = Float64Array.from({ length: 300 }, (_, i) => (i % 2 === 0 ? (i + 1) / 45_300 : 0));
		const found = convolved(even, even, 599, transformLength(599));
		expect(found.filter((chance, i) => i % 2 === 1 && chance !== 0)).toHaveLength(0);
		expect(found.filter((chance, i) => i % 2 === 0 && chance > 0)).toHaveLength(299);
	});

	test.each([
		[1, 1],
		[2, 2],
		[5, 8],
		[8, 8],
		[9, 16],
	])("%d amounts ask for a length of %d", (amounts, length) => {
		expect(transformLength(amounts)).toBe(length);
	});

	test("it is done for more than twelve products a step", () => {
		expect([isWorthTransforming(12 * 8 * 3, 8), isWorthTransforming(12 * 8 * 3 + 1, 8)]).toEqual([
			false,
			true,
		]);
	});

	test("large Poisson counts add up to the Poisson count of both means", () => {
		const both = plus(poisson(60_000), poisson(90_000));
		const wanted = poisson(150_000);
		for (const level of [0.001, 0.5, 0.95, 0.9999])
			expect(setAside(both, level)).toBe(setAside(wanted, level));
		const at = setAside(wanted, 0.5);
		expectWithin(
			both.chance[at - both.first] as number,
			wanted.chance[at - wanted.first] as number,
			1e-14,
			"chance",
		);
	});
});

import { describe, expect, test } from "vitest";
import { fewestEnough, firstEnough } from "../../../src/core/kits/fewestEnough.ts";

const MOST = 500;
const everyNumber = Array.from({ length: MOST }, (_, i) => i + 1);

describe("the fewest kits that are enough", () => {
	test("each number that can be the fewest is found, and that none is", () => {
		for (const fewest of everyNumber)
			expect(fewestEnough(MOST, (kits) => kits >= fewest)).toBe(fewest);
		expect(fewestEnough(MOST, () => false)).toBeGreaterThan(MOST);
	});

	test.each([1, 4, 60, 495, 500])("from %i on, each number is found, and that none is", (least) => {
		for (const fewest of everyNumber.filter((kits) => kits >= least))
			expect(firstEnough(least, MOST, (kits) => kits >= fewest)).toBe(fewest);
		expect(firstEnough(least, MOST, () => false)).toBeGreaterThan(MOST);
	});

	test("more kits need not be enough: one of the first ten more is found all the same", () => {
		for (let only = 30; only <= 40; only++)
			expect(firstEnough(30, MOST, (kits) => kits === only)).toBe(only);
	});

	test("further on, what is found is enough while one fewer is not, and few numbers are looked at", () => {
		const areEnough = (kits: number) => kits >= 100 && kits % 7 !== 0;
		let looked = 0;
		const found = firstEnough(3, MOST, (kits) => {
			looked++;
			return areEnough(kits);
		});
		expect([areEnough(found), areEnough(found - 1)]).toEqual([true, false]);
		expect(looked).toBeLessThan(30);
	});
});

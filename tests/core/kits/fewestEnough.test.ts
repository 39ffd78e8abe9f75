import { describe, expect, test } from "vitest";
import { fewestEnough, firstEnough } from "../../../src/core/kits/fewestEnough.ts";

const MOST = 500;
const everyNumber = Array.from({ length: MOST }, (_, i) => i + 1);

describe("the fewest kits that are enough", () => {
	const ALLOWED = 0.5;
	/** Just above the limit below `fewest`, just below from there on; or as it shrinks. */
	test.each<[string, (kits: number, fewest: number) => number]>([
		["by a step", (kits, fewest) => (kits >= fewest ? 0.49 : 0.51)],
		["to nothing", (kits, fewest) => (kits >= fewest ? 0 : 1000)],
		["by the same factor with each", (kits, fewest) => 0.6 ** (kits - fewest + 0.5) * ALLOWED],
		["more and more quickly", (kits, fewest) => 900 - (kits / (fewest - 0.5)) ** 3 * 899.5],
	])("each number that can be the fewest is found, where what is unmet shrinks %s", (_, of) => {
		for (const fewest of everyNumber)
			expect(fewestEnough(MOST, ALLOWED, (kits) => Math.max(0, of(kits, fewest)))).toBe(fewest);
	});

	test("and that none is", () => {
		expect(fewestEnough(MOST, ALLOWED, () => 1)).toBeGreaterThan(MOST);
		expect(fewestEnough(MOST, ALLOWED, () => ALLOWED)).toBe(1);
		// As many as are looked at in doubling: 512 are not enough either.
		expect(fewestEnough(512, ALLOWED, () => 1)).toBeGreaterThan(512);
		expect(fewestEnough(512, ALLOWED, (kits) => (kits < 512 ? 1 : 0))).toBe(512);
	});

	test("few numbers are looked at where it shrinks by the same factor", () => {
		let looked = 0;
		fewestEnough(MOST, ALLOWED, (kits) => {
			looked++;
			return 1000 * 0.97 ** kits;
		});
		// 0, then 1, 2, 4, … 256, and at most three more.
		expect(looked).toBeLessThanOrEqual(1 + 9 + 3);
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

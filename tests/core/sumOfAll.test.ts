import { expect, test } from "vitest";
import { sumOfAll } from "../../src/core/sumOfAll.ts";

test.each([
	[[3, 0, 2.5], 5.5],
	[[], 0],
	[[1e16, 1, 1], 1e16 + 2],
	[[1, 1e16, 1], 1e16 + 2],
	[[3, 1e16, ...new Array<number>(28).fill(1), 5, 4], 1e16 + 40],
	[[1e16, ...new Array<number>(32).fill(1)], 1e16 + 32],
])("%j add up to %d in whatever order, and what is small counts", (amounts, sum) => {
	expect(sumOfAll(amounts)).toBe(sum);
	expect(sumOfAll([...amounts].reverse())).toBe(sum);
});

import { expect, test } from "vitest";
import { upTo } from "../../src/core/upTo.ts";

test.each([
	["the next multiple", 785.71, 10, 790],
	["a multiple itself", 790, 10, 790],
	["nothing", 0, 10, 0],
	["less than a step", 0.2, 1, 1],
	["a sum that rounding left just over a multiple", 0.1 + 0.2, 0.1, 3 * 0.1],
	["and among very many steps", 3_000_000.000_000_000_5, 0.1, 30_000_000 * 0.1],
	["a little more than a multiple", 10.000_001, 10, 20],
])("%s", (_what, quantity, step, up) => {
	expect(upTo(quantity, step)).toBe(up);
});

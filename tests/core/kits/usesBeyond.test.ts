import { expect, test } from "vitest";
import { beyondEach, beyondOne } from "../../../src/core/counts/beyondEach.ts";
import { beyondOf, usesBeyond } from "../../../src/core/kits/usesBeyond.ts";
import { expectWithin } from "../../expectWithin.ts";

test.each([0, 0.3, 20, 400, 700, 1000])("what is left out could not be seen, mean %d", (mean) => {
	const uses = usesBeyond(mean);
	expect(uses.length).toBeLessThan(60 + 2 * mean + 100);
	for (const kits of [0, 1, 30, 60, uses.length - 1])
		expectWithin(beyondOf(uses, kits), beyondOne(kits, mean), 1e-12 * (mean + 1e-9), "uses");
	expect(beyondOne(uses.length, mean)).toBeLessThan(1e-35);
	expect(beyondOf(uses, uses.length)).toBe(0);
});

test("however little is beyond, it keeps its digits", () => {
	const uses = usesBeyond(0.3);
	for (const [kits, beyond] of beyondEach(16, 0.3).entries())
		expectWithin(uses[kits], beyond, 1e-12 * beyond, "uses");
});

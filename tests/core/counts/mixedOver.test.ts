import { expect, test } from "vitest";
import { always } from "../../../src/core/counts/counts.ts";
import { mixedOver } from "../../../src/core/counts/mixedOver.ts";

/** Nodes of a level that is twice its mean with the chance given; which of them are asked, and what comes of them. */
test.each([
	["seldom", 1e-13, [1, 2], [1 - 1e-13, 1e-13]],
	["as seldom as what is cut off either end", 1e-14, [1], [1 - 1e-14]],
	["never", 0, [1], [1]],
])("a level that is %s", (_what, weight, levels, chance) => {
	const asked: number[] = [];
	const nodes = [
		{ factor: 1, weight: 1 - weight },
		{ factor: 2, weight },
	];
	const mixed = mixedOver(nodes, (factor) => {
		asked.push(factor);
		return always(factor);
	});
	expect(asked).toEqual(levels);
	expect([mixed.first, ...mixed.chance]).toEqual([1, ...chance]);
});

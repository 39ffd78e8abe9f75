import { expect, test } from "vitest";
import { inOrder } from "../../../src/core/values/inOrder.ts";

test.each<[string | number, string | number, number]>([
	["a", "b", -1],
	["b", "a", 1],
	["a", "a", 0],
	["10", "9", -1],
	[10, 9, 1],
	[9, 10, -1],
	[9, 9, 0],
])("%j beside %j: %d", (one, other, order) => {
	expect(inOrder(one, other)).toBe(order);
});

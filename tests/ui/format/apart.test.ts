import { expect, test } from "vitest";
import { apart } from "../../../src/ui/format/apart.ts";

test.each([
	["none", [], []],
	["apart already", [9, 6, 2], [9, 6, 2]],
	["two at one height", [9, 9], [9, 7]],
	["one that has to make way twice", [9, 9, 8], [9, 7, 5]],
	["at the foot", [9, 0.5, 0], [9, 3, 1]],
	["all at the foot", [0, 0, 0], [5, 3, 1]],
])("%s", (_what, wanted, heights) => {
	expect(apart(wanted, 2, 1)).toEqual(heights);
});

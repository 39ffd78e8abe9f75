import { expect, test } from "vitest";
import { firstLevel } from "../../../src/core/forecast/firstLevel.ts";

const even = [1, 1, 1, 1, 1, 1, 1];

test.each<[string, (number | null)[], number[], number[]]>([
	["nothing recorded: the setting", [], even, [14, 7]],
	["2 a day for 7 days, then 1, 0 and 3", [1, 0, 3], even, [18, 10]],
	["missing days are not zeros", [null, 4, null], even, [18, 8]],
	["quiet weekdays count for less", [1, 1], [0.5, 1.5], [16, 9]],
	["no birth in a month: still above none", new Array(30).fill(0), even, [14, 37]],
])("%s", (_what, counts, factors, [a, b]) => {
	expect(firstLevel(counts, factors, 2, 7)).toEqual({ a, b });
});

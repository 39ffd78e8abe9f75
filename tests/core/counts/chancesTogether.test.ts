import { expect, test } from "vitest";
import { ChancesTogether } from "../../../src/core/counts/chancesTogether.ts";
import { logChance } from "../../../src/core/counts/negativeBinomial.ts";
import { expectWithin } from "../../expectWithin.ts";

type Day = readonly [count: number, size: number, mean: number];

test.each<[string, Day[]]>([
	["no count", []],
	["one", [[3, 3.5, 5.25]]],
	[
		"none came, few, many, very many",
		[
			[0, 3.5, 5.25],
			[7, 12, 6],
			[40, 152, 31],
			[41, 152, 31],
			[900, 80, 500],
		],
	],
	["a year of days", Array.from({ length: 365 }, (_, day): Day => [day % 13, 4 + (day % 5), 6.5])],
	["a year of large days", Array.from({ length: 365 }, (_, day): Day => [20 + (day % 21), 9, 500])],
	[
		"so many where hardly any was expected",
		[
			[40, 3, 1e-9],
			[12, 1e-30, 2],
			[2, 4, 1],
		],
	],
	[
		"sizes that cannot be told from Poisson",
		[
			[5, 1e9, 4],
			[30, 1e12, 25],
		],
	],
])("%s: the sum of the logarithms of each", (_what, days) => {
	const together = new ChancesTogether();
	for (const [count, size, mean] of days) together.add(count, size, mean);
	const sum = days.reduce((all, [count, size, mean]) => all + logChance(count, size, mean), 0);
	expectWithin(together.log, sum, 1e-11 * Math.max(1, -sum), "in logarithm");
	expect(Number.isFinite(together.log)).toBe(true);
});

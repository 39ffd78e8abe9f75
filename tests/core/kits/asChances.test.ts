import { expect, test } from "vitest";
import { asChances } from "../../../src/core/kits/asChances.ts";

test.each([
	[
		[1, 3],
		[0.25, 0.75],
	],
	[
		[-0.5, 0.5, 1.5],
		[0, 0.25, 0.75],
	],
	[[2], [1]],
])("%j as chances are %j", (numbers, chances) => {
	expect([...asChances(Float64Array.from(numbers))]).toEqual(chances);
});

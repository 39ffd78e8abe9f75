import { expect, test } from "vitest";
import { errorPct, READING_ERROR } from "../../../src/core/chlorine/readingRange.ts";
import { strengthReadingsSheet } from "../../../src/core/sheets/strengthReadings.ts";

// Wells et al. 2016, abstract (chlorine.md, CL80): titration up to 12.4 %, dilution and colour 2.4 to 19 %, strips 5.2 to 48 %.
test.each([
	["strip", 5.2, 48],
	["colour_comparison", 2.4, 19],
	["titration", 0, 12.4],
] as const)("%s: %d to %d %%, as published and no smaller", (method, least, most) => {
	expect(errorPct(READING_ERROR[method].least)).toBe(least);
	expect(errorPct(READING_ERROR[method].most)).toBe(most);
});

test("the sheet of readings says them so", () => {
	expect(strengthReadingsSheet.columns.method.help).toBe(
		"Strips are 5.2 to 48 % off, colour comparison 2.4 to 19 %, titration up to 12.4 %.",
	);
});
